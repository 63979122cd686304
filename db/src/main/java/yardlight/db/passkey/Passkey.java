package yardlight.db.passkey;

import java.time.Instant;

/**
 * A passkey, as WebAuthn level 3, 4 ("Credential Record") has it.
 *
 * @param id of the credential, in Base64url, up to 1,400 characters
 * @param handle of the login that it belongs to, in Base64url
 * @param label what its owner calls it, up to 100 characters
 * @param uses as the authenticator counts them; 0 where it does not
 * @param transports words of WebAuthn, with commas between
 */
public record Passkey(
        String id,
        String handle,
        String label,
        byte[] publicKey,
        long uses,
        boolean verified,
        String transports,
        boolean mayBeCopied,
        boolean isCopied,
        byte[] attestation,
        byte[] clientData,
        Instant createdAt,
        Instant lastUsedAt) {}
