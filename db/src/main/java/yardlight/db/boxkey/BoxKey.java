package yardlight.db.boxkey;

import java.time.Instant;
import java.util.Optional;

/**
 * A key of a box.
 *
 * @param id by which it is revoked; says nothing about the key
 * @param hash of the key, up to 64 characters
 */
public record BoxKey(String id, String box, String hash, Instant createdAt, Optional<Instant> revokedAt) {}
