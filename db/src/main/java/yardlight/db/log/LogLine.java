package yardlight.db.log;

import java.time.Instant;
import java.util.Map;

/**
 * One line of the log.
 *
 * @param line counts from 1 without a gap
 * @param what in the words of {@code Entry.What}, such as {@code alarm}
 * @param about ids of what it is about, by the words of the contract
 */
public record LogLine(long line, Instant at, String what, Map<String, String> about, String words) {}
