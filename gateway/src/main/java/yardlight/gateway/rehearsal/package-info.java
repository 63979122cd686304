/**
 * The ladder run on paper, over the API. Start reading at {@code RehearsalsController}. Who would be told what and when
 * is worked out by the engine itself; here the question is read and the timeline written down.
 */
package yardlight.gateway.rehearsal;
