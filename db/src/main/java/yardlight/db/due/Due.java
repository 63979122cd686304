package yardlight.db.due;

import java.time.Instant;

/** Something whose time has come. */
public record Due(DueKey key, Instant at) {}
