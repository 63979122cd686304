package yardlight.db.setup;

import java.time.Instant;

/**
 * That the setup was changed once.
 *
 * @param version that it has had since
 * @param by login of the person
 */
public record SetupEdit(int version, Instant at, String by) {}
