/**
 * Tells another gateway at each turn that this one does its work, so that somebody notices when it no longer does. Start
 * reading at {@code Round}.
 *
 * <p>To the other gateway this one is a box with a heartbeat, and to say nothing is how trouble is told: what makes this one
 * silent stands in the implementations of {@code Vital}.
 */
package yardlight.gateway.watch;
