/**
 * Keys that all gateways of one database share, such as the one that signs links. Start reading at
 * {@link yardlight.db.secret.Secrets}.
 *
 * <p>Knows nothing of what they are for, and makes none: the caller brings the random bytes.
 */
package yardlight.db.secret;
