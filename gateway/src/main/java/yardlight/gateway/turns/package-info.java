/**
 * Who is on call when, as a calendar; swaps, and rosters themselves, made and changed. Start reading at {@code TurnsPage}.
 * Who is on call at a moment only {@link yardlight.escalation.roster.Roster} knows.
 */
package yardlight.gateway.turns;
