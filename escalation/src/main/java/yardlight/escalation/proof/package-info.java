/**
 * What shows that a way to a person works: what was seen of each line, and when somebody is told that all is well. Start
 * reading at {@link yardlight.escalation.proof.LineHealth}.
 *
 * <p>Knows nothing of alarms and of what texts say.
 */
package yardlight.escalation.proof;
