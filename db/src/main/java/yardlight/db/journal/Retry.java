package yardlight.db.journal;

import java.time.Instant;

/**
 * A notice that is to be sent again, if it is still queued.
 *
 * @param since when it got into the outbox for the line that was tried; for another line it is another matter
 * @param at not before this instant
 * @param deferrals how often it was put off on its present line
 * @param doubts how often nobody knows whether it was taken
 */
public record Retry(String notice, Instant since, Instant at, int deferrals, int doubts) {}
