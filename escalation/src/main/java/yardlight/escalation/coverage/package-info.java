/**
 * Whom an alarm would reach at any minute to come, and how soon a second person is called. Start reading at
 * {@link yardlight.escalation.coverage.Coverage}.
 *
 * <p>It climbs ladders by the rule that calls people ({@code Climb}), and looks up who is on call and who sleeps instead of
 * working it out anew for each minute.
 */
package yardlight.escalation.coverage;
