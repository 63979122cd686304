/**
 * The passkeys of people. Start reading at {@link yardlight.db.passkey.Passkeys}.
 *
 * <p>Knows nothing of how one is checked: what an authenticator sent is kept as it came.
 */
package yardlight.db.passkey;
