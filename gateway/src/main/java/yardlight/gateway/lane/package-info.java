/**
 * The lane: one thread that takes what was handed in, has the engine decide it, and stores a whole batch in one
 * transaction before anybody is answered. Start reading at {@link yardlight.gateway.lane.Lane}, then {@code Batch}.
 *
 * <p>Has no rule of its own, and knows nothing of HTTP or of channels.
 */
package yardlight.gateway.lane;
