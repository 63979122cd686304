/**
 * The keys of boxes, of which only a hash is kept. Start reading at {@link yardlight.db.boxkey.BoxKeys}.
 *
 * <p>Knows nothing of how a key is made or hashed.
 */
package yardlight.db.boxkey;
