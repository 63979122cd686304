package yardlight.gateway.lane;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.gateway.clock.Leap;

/**
 * Since when the gateway hears boxes without a break. What a box did not say before, it may have said to a gateway that was not
 * there, that slept, or that could not store it.
 */
final class Hearing {

    /** What is shorter is no break: a box that was not taken says it again. */
    static final Duration BREAK = Duration.ofSeconds(30);

    private static final Logger LOG = LoggerFactory.getLogger(Hearing.class);

    private final InstantSource clock;
    private final Leap leap;
    private final Instant started;
    private volatile Instant back = Instant.EPOCH;
    private Optional<Instant> lost = Optional.empty();

    Hearing(InstantSource clock, Leap leap) {
        this.clock = clock;
        this.leap = leap;
        this.started = clock.instant();
    }

    /** The end of the last break; {@link Instant#EPOCH} when there was none. */
    Instant since() {
        return leap.last().filter(back::isBefore).orElse(back);
    }

    /** The same, or the start if that was later: a gap across it says nothing of a box's habits. */
    Instant unbroken() {
        Instant since = since();
        return since.isAfter(started) ? since : started;
    }

    /**
     * It begins to hear.
     *
     * @param last when a gateway last stored anything in this database; empty in a new one
     */
    void begin(Optional<Instant> last) {
        last.ifPresent(this::backFrom);
    }

    /** From now on nothing can be stored. */
    void lose() {
        if (lost.isEmpty()) {
            lost = Optional.of(clock.instant());
        }
    }

    /** Things are stored again. Another gateway may have stored all along, or may have come back a moment before: nobody knows. */
    void regain() {
        lost.ifPresent(this::backFrom);
        lost = Optional.empty();
    }

    private void backFrom(Instant gone) {
        Instant now = clock.instant();
        Duration away = Duration.between(gone, now);
        if (away.compareTo(BREAK) >= 0) {
            back = now;
            LOG.info(
                    "nothing was stored for {} s: no box is taken for silent before its time has passed anew",
                    away.toSeconds());
        }
    }
}
