/**
 * Signing in by a passkey (W3C Web Authentication, level 3). Start reading at {@code PasskeyWay}, and for the page at
 * {@code PasskeysPage}.
 */
package yardlight.gateway.passkeys;
