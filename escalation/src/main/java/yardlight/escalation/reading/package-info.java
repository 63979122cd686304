/**
 * What is measured: one number of one point at one instant. Start with {@link Reading}. Nothing here knows what a number
 * means; limits, tanks and pumps do.
 */
package yardlight.escalation.reading;
