/**
 * Tells open pages that something has changed, so that they look again. Start reading at
 * {@link yardlight.gateway.live.Watching}.
 *
 * <p>Knows nothing of what has changed: a page fetches itself, through its own door.
 */
package yardlight.gateway.live;
