/**
 * The decision. Start with {@link yardlight.escalation.Escalator}, then {@code alarm.AlarmTransitions}, then
 * {@code EscalatorTest}.
 *
 * <p>Everything here is a function of the old {@link yardlight.escalation.Situation}, a {@link
 * yardlight.escalation.Stimulus} and the time. It must not know a clock, a database, a thread or a library; who drives
 * it (the gateway, a test, a simulated night, a rehearsal) makes no difference to it.
 */
package yardlight.escalation;
