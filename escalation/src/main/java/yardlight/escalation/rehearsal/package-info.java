/**
 * The engine walked through time: nights in tests, and the owner's rehearsal of a ladder.
 *
 * <p>Start with {@link yardlight.escalation.rehearsal.Simulation}. It orders and delivers; a rule written here would be
 * a second engine.
 */
package yardlight.escalation.rehearsal;
