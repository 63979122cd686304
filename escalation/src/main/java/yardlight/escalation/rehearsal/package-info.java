/**
 * The engine walked through time: nights in tests, and the owner's rehearsal of a ladder.
 *
 * <p>Start with {@link yardlight.escalation.rehearsal.Simulation}. It orders and delivers; a rule written here would be
 * a second engine. Past nights are played by {@link yardlight.escalation.rehearsal.PastNights}, from what the log tells.
 */
package yardlight.escalation.rehearsal;
