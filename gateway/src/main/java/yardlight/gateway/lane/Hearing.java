package yardlight.gateway.lane;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.gateway.clock.Leap;

/**
 * Since when boxes are heard without a break. What a box did not say before, it may have said to a gateway that was not there, that
 * slept, or that could not store it. The end of a break is stored by the first transaction after it, for whoever comes later
 * sees only that somebody stores. For the one thread that writes.
 */
final class Hearing {

    /** What is shorter is no break: a box that was not taken says it again. */
    static final Duration BREAK = Duration.ofSeconds(30);

    private static final Logger LOG = LoggerFactory.getLogger(Hearing.class);

    private final InstantSource clock;
    private final Leap leap;
    private final Instant started;

    /** When it could still hear, as far as it knows, while something may have been missed. */
    private Optional<Instant> lost = Optional.of(Instant.EPOCH);

    Hearing(InstantSource clock, Leap leap) {
        this.clock = clock;
        this.leap = leap;
        this.started = clock.instant();
    }

    /** Since when this gateway is there. */
    Instant started() {
        return started;
    }

    /**
     * The end of the last break, as the transaction sees it that is about to be stored; empty when there was none. One that is
     * still to come is that of a clock set wrong, and is now.
     *
     * @param last when any gateway last stored anything in this database; empty in a new one
     * @param known the end of the last break that any of them knows of
     */
    Optional<Instant> back(Optional<Instant> last, Optional<Instant> known, Instant now) {
        boolean away = lost.isPresent()
                && last.map(stored -> later(stored, lost.get()))
                        .filter(gone -> !now.isBefore(gone.plus(BREAK)))
                        .isPresent();
        return away ? Optional.of(now) : known.map(end -> end.isAfter(now) ? now : end);
    }

    /** The same for what is judged by it here: a leap of this gateway's clock is no break for the others. */
    Instant since(Optional<Instant> back) {
        return later(leap.last().orElse(Instant.EPOCH), back.orElse(Instant.EPOCH));
    }

    /** From now on nothing can be stored. */
    void lose() {
        if (lost.isEmpty()) {
            lost = Optional.of(clock.instant());
        }
    }

    /** That transaction was stored: what it says of the last break is all that there is to say. */
    void stored(Optional<Instant> known, Optional<Instant> back) {
        lost = Optional.empty();
        back.filter(end -> !known.equals(back))
                .ifPresent(end -> LOG.info(
                        "nothing was stored for a while before {}: no box is taken for silent before its time has passed anew",
                        end));
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }
}
