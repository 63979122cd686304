/**
 * Tokens of OAuth 2.0 in place of a password, from a file or from a token endpoint (RFC 6749). Start with
 * {@link yardlight.channels.oauth.Tokens}.
 *
 * <p>It is no channel, and knows none: those that log in somewhere ask it.
 */
package yardlight.channels.oauth;
