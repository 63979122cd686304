/**
 * Signed requests: HTTP Message Signatures (RFC 9421) with {@code hmac-sha256} over a digest of the body (RFC 9530), as much
 * of them as a microcontroller needs. Start reading at {@link yardlight.gateway.signature.SignedRequest}. Whose key it is and whether a
 * request came before is asked elsewhere; here is no clock and nothing is kept.
 */
package yardlight.gateway.signature;
