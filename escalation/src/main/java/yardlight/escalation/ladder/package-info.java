/**
 * Whom to call in what order: the ladder as the owner wrote it, and the callout that climbs it.
 *
 * <p>Start with {@link yardlight.escalation.ladder.Callout}, the five things that a climb can be; {@link
 * yardlight.escalation.ladder.Place} walks from one call to the next. Only ids of people are known here, not how they are
 * reached, and of alarms only which ones they are and how urgent.
 */
package yardlight.escalation.ladder;
