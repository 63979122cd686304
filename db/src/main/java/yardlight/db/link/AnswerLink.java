package yardlight.db.link;

import java.time.Instant;
import java.util.Optional;

/**
 * The link in one text.
 *
 * @param tokenHash up to 64 characters
 * @param notice id of the notice that it answers
 */
public record AnswerLink(String tokenHash, String notice, Instant expiresAt, Optional<Instant> usedAt) {}
