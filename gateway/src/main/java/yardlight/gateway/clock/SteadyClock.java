package yardlight.gateway.clock;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The time of day, held against the time that passes. While it runs it never goes back: when somebody sets the machine's
 * clock back, it goes on as if nobody had, so that whoever is to be called in five minutes is called in five minutes and
 * the record stays in order. A step forward is followed, first of all to make up for steps back. A machine that slept looks
 * the same as one whose clock was set forward.
 */
final class SteadyClock implements InstantSource, Leap {

    /** More than clocks drift apart between two looks, less than anybody waits for. */
    static final Duration STEP = Duration.ofSeconds(1);

    private static final Logger LOG = LoggerFactory.getLogger(SteadyClock.class);
    private static final long ONE_LOOK_NANOS = Duration.ofMillis(50).toNanos();
    private static final int LOOKS = 10;

    /** What both clocks show at one moment. */
    private record Look(long nanos, Instant wall) {}

    private final InstantSource wall;
    private final LongSupplier nanos;
    private Look last;
    private Instant told;
    private Duration ahead = Duration.ZERO;
    private Optional<Instant> leapt = Optional.empty();

    SteadyClock(InstantSource wall, LongSupplier nanos) {
        this.wall = wall;
        this.nanos = nanos;
        this.last = look();
        this.told = last.wall();
    }

    @Override
    public synchronized Instant instant() {
        Look look = look();
        Duration step = Duration.between(last.wall().plusNanos(look.nanos() - last.nanos()), look.wall());
        last = look;
        if (step.abs().compareTo(STEP) > 0) {
            stepped(step);
        }
        Instant now = look.wall().plus(ahead);
        told = now.isAfter(told) ? now : told;
        return told;
    }

    @Override
    public synchronized Optional<Instant> last() {
        return leapt;
    }

    private void stepped(Duration step) {
        Duration left = ahead.minus(step);
        ahead = left.isNegative() ? Duration.ZERO : left;
        if (step.isNegative()) {
            LOG.warn(
                    "the machine's clock was set back by {}; the gateway's goes on, {} ahead of it",
                    words(step),
                    words(ahead));
        } else if (left.isNegative()) {
            leapt = Optional.of(last.wall());
            LOG.warn(
                    "the machine's clock was set forward by {}, or the machine slept so long; it is followed",
                    words(step));
        } else {
            LOG.warn(
                    "the machine's clock was set forward by {}; the gateway's is {} ahead of it now",
                    words(step),
                    words(ahead));
        }
    }

    private static Duration words(Duration step) {
        return step.abs().truncatedTo(ChronoUnit.SECONDS);
    }

    /** A thread may be held up between the two: then they are not of one moment, and would look like a step. */
    private Look look() {
        Look look = null;
        for (int i = 0; i < LOOKS; i++) {
            long before = nanos.getAsLong();
            look = new Look(before, wall.instant());
            if (nanos.getAsLong() - before < ONE_LOOK_NANOS) {
                return look;
            }
        }
        return look;
    }
}
