/**
 * The wall clock, and the only place that asks it. Start reading at {@code ClockConfiguration}: everybody else takes a
 * {@link java.time.InstantSource}.
 *
 * <p>Knows nothing of the rest of the gateway.
 */
package yardlight.gateway.clock;
