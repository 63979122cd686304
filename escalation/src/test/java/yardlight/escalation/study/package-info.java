/**
 * Outages with known truth, read by the real rules and by two plain ones.
 *
 * <p>Start with {@link yardlight.escalation.study.OutageStudyTest}. Every number of the world stands in {@link
 * yardlight.escalation.study.Fact}, with its source. Only {@link yardlight.escalation.study.OurRules} knows the engine.
 */
package yardlight.escalation.study;
