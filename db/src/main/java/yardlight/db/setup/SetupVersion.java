package yardlight.db.setup;

import java.time.Instant;

/**
 * The setup as it was stored once.
 *
 * @param version counts from 1
 * @param document as it was handed in
 * @param by login of the person
 */
public record SetupVersion(int version, String document, Instant at, String by) {}
