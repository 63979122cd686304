/**
 * The links in texts: of each only the hash of its token, when it expires and whether it was used. Start reading at
 * {@link yardlight.db.link.AnswerLinks}.
 *
 * <p>Knows nothing of how a token is made, signed or hashed.
 */
package yardlight.db.link;
