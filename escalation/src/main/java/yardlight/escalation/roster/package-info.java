/**
 * Who is on call by turns, counted on the clock on the wall.
 *
 * <p>Everything is in {@link yardlight.escalation.roster.Roster}. It knows ids and times and nothing else of ours; that a
 * roster can name another one is followed where contacts are looked up.
 */
package yardlight.escalation.roster;
