package yardlight.gateway.account;

import java.time.Instant;
import java.util.Optional;

/**
 * Something that happened to an alarm.
 *
 * @param english whether these are the log's own words, which are English
 * @param line that of the log which says it; empty for what stands with the alarm and its notices
 */
public record Moment(Instant at, String words, boolean english, Optional<Long> line) {}
