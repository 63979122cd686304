package yardlight.gateway.clock;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.function.LongSupplier;

/** A clock that begins where it is told and runs faster or slower than time does. */
final class DemoClock implements InstantSource, Pace {

    private final Instant start;
    private final double speed;
    private final LongSupplier nanos;
    private final long began;

    DemoClock(Instant start, double speed, LongSupplier nanos) {
        this.start = start;
        this.speed = speed;
        this.nanos = nanos;
        this.began = nanos.getAsLong();
    }

    @Override
    public Instant instant() {
        long passed = (long) ((nanos.getAsLong() - began) * speed);
        return start.plusNanos(passed).truncatedTo(ChronoUnit.MILLIS);
    }

    @Override
    public Duration real(Duration span) {
        return Duration.ofNanos((long) (span.toNanos() / speed));
    }
}
