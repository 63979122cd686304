/**
 * Where rehearsals are played, for whoever wants one. Start reading at {@link yardlight.gateway.stage.Stage}.
 *
 * <p>Who would be told what and when is worked out by {@link yardlight.escalation.rehearsal.Rehearsal} and nowhere here.
 */
package yardlight.gateway.stage;
