package yardlight.gateway.clock;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;

/** A machine's clock that somebody sets: begins where it is told, and goes as fast as time does. */
final class Wall implements InstantSource {

    private final Instant start;
    private final long began = System.nanoTime();
    private volatile Duration set = Duration.ZERO;

    Wall(Instant start) {
        this.start = start;
    }

    /** Sets it forward, or back. */
    void set(Duration step) {
        set = set.plus(step);
    }

    @Override
    public Instant instant() {
        return start.plusNanos(System.nanoTime() - began).plus(set).truncatedTo(ChronoUnit.MILLIS);
    }
}
