/**
 * How long something ran: the share of a day, how often it started, how long at most, and whether that is as on its own
 * earlier days. Start with {@link yardlight.escalation.runtime.RunTime}.
 *
 * <p>Knows an on/off signal over time and nothing else; what a change may mean is said elsewhere.
 */
package yardlight.escalation.runtime;
