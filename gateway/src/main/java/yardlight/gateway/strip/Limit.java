package yardlight.gateway.strip;

/**
 * A limit of a point, to be drawn in.
 *
 * @param words its condition for people: {@code high-high}
 * @param value in the point's unit
 * @param above whether the trouble lies above it
 */
public record Limit(String words, double value, boolean above) {}
