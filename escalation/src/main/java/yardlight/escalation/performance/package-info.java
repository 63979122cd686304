/**
 * How good the alarms of a time were, in the terms of ISA-18.2 and EEMUA 191, and what they cost the people who were called.
 * Start reading at {@link yardlight.escalation.performance.Performance}.
 *
 * <p>Arithmetic over what happened: the numbers that tell a flood, chatter and a stale alarm are those of
 * {@code escalation.alarm}, and an on-delay is tried by its rules.
 */
package yardlight.escalation.performance;
