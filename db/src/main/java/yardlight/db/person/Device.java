package yardlight.db.person;

import java.time.Instant;

/**
 * What somebody signs in with.
 *
 * @param id hash of what it is known by, up to 64 characters
 * @param way {@code browser} or {@code program}
 * @param agent what it says it is, up to 200 characters
 */
public record Device(
        String id, String login, String way, String address, String agent, Instant firstAt, Instant lastAt) {}
