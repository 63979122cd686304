/**
 * Web Push (RFC 8030, 8291, 8292) to a browser that somebody subscribed with: no provider, no account. Start with
 * {@link yardlight.channels.push.PushChannel}; where it may go to is decided in {@code Endpoint} and {@code Neighbours}.
 *
 * <p>The only package that knows the library that encrypts and signs.
 */
package yardlight.channels.push;
