package yardlight.gateway.strip;

import java.time.Instant;

/**
 * An alarm of a point, to be drawn in.
 *
 * @param id of the occurrence
 * @param to when it ended, or when somebody looks while it has not
 * @param words what and since when
 */
public record Trouble(String id, String point, Instant from, Instant to, String words) {}
