package yardlight.gateway.clock;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The time of day, held against the time that passes. It never goes back: when somebody sets the machine's clock back, it
 * goes on and is ahead for a while, so that whoever is to be called in five minutes is called in about five minutes and
 * the record stays in order. It goes slower then until the two agree, for quiet hours and rosters go by the wall. A step
 * forward is followed, first of all to make up for steps back. A machine that slept looks the same as one whose clock was
 * set forward.
 */
final class SteadyClock implements InstantSource, Leap, Steps {

    /** More than clocks drift apart between two looks, less than anybody waits for. */
    static final Duration STEP = Duration.ofSeconds(1);

    /** In this time it agrees with the machine's again, if that is no more than {@link #MOST_LAG} of it. */
    static final Duration AGREED = Duration.ofHours(24);

    /** Of each second, while it is ahead: a wait of five minutes takes 20 s longer at least, and never more than ten. */
    private static final double LEAST_LAG = 1.0 / 16;

    private static final double MOST_LAG = 1.0 / 2;

    private static final Logger LOG = LoggerFactory.getLogger(SteadyClock.class);
    private static final long ONE_LOOK_NANOS = Duration.ofMillis(50).toNanos();
    private static final int LOOKS = 10;

    /** What both clocks show at one moment. */
    private record Look(long nanos, Instant wall) {}

    private final InstantSource wall;
    private final LongSupplier nanos;
    private final List<Consumer<String>> listeners = new CopyOnWriteArrayList<>();
    private Look last;
    private Instant told;
    private Duration ahead = Duration.ZERO;
    private double lag;
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
        long passed = look.nanos() - last.nanos();
        Duration step = Duration.between(last.wall().plusNanos(passed), look.wall());
        last = look;
        slower(passed);
        if (step.abs().compareTo(STEP) > 0) {
            stepped(step);
        }
        Instant now = look.wall().plus(ahead).truncatedTo(ChronoUnit.MILLIS);
        told = now.isAfter(told) ? now : told;
        return told;
    }

    @Override
    public synchronized Optional<Instant> last() {
        return leapt;
    }

    @Override
    public void listen(Consumer<String> listener) {
        listeners.add(listener);
    }

    private void slower(long passed) {
        if (!ahead.isZero()) {
            ahead = atLeastNothing(ahead.minusNanos((long) (passed * lag)));
            if (ahead.isZero()) {
                say("the gateway's clock agrees with the machine's again");
            }
        }
    }

    private void stepped(Duration step) {
        Duration left = ahead.minus(step);
        ahead = atLeastNothing(left);
        if (step.isNegative()) {
            lag = Math.min(MOST_LAG, Math.max(LEAST_LAG, (double) ahead.toMillis() / AGREED.toMillis()));
            say("the machine's clock was set back by " + Span.words(step.negated()) + "; the gateway's is "
                    + Span.words(ahead) + " ahead of it, and goes slower until they agree");
        } else if (left.isNegative()) {
            leapt = Optional.of(last.wall());
            say("the machine's clock was set forward by " + Span.words(step)
                    + ", or the machine slept so long; the gateway's follows it");
        } else {
            say("the machine's clock was set forward by " + Span.words(step) + "; the gateway's is " + Span.words(ahead)
                    + " ahead of it now");
        }
    }

    private void say(String words) {
        LOG.warn(words);
        listeners.forEach(listener -> listener.accept(words));
    }

    private static Duration atLeastNothing(Duration span) {
        return span.isNegative() ? Duration.ZERO : span;
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
