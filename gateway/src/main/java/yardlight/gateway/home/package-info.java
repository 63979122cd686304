/**
 * Where the gateway keeps its things, and what it says when it cannot get at them. Start reading at
 * {@code HomeDatabase}.
 *
 * <p>Runs before anything else does; knows nothing of the rest of the gateway.
 */
package yardlight.gateway.home;
