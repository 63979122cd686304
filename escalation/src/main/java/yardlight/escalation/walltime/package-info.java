/**
 * Times on the clock on the wall, and what becomes of them in the two nights of the year that change it. Start reading at
 * {@link yardlight.escalation.walltime.WallTime}.
 *
 * <p>Knows nothing else of ours.
 */
package yardlight.escalation.walltime;
