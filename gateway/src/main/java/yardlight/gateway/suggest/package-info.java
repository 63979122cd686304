/**
 * Says what a point's own readings would have led to, as it is set up and with other delays and deadbands. Start reading at
 * {@link yardlight.gateway.suggest.Suggesting}.
 *
 * <p>It changes nothing, and has no rule of its own: readings are replayed through those that hold for new ones.
 */
package yardlight.gateway.suggest;
