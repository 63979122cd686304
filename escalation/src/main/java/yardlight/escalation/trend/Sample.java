package yardlight.escalation.trend;

import java.time.Instant;

/** One measurement of a value. */
public record Sample(Instant at, double value) {}
