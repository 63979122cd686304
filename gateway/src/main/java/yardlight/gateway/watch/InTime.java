package yardlight.gateway.watch;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import java.util.function.Function;
import yardlight.gateway.clock.Pace;

/** Whether what is due is done: a call that does not go on at its time wakes nobody. */
final class InTime implements Vital {

    /** A sweep takes what is due within a quarter of a second; this is a lane or a loop that is stuck. */
    static final Duration MOST = Duration.ofMinutes(1);

    private final Function<Instant, Optional<Instant>> oldest;
    private final InstantSource clock;
    private final Pace pace;

    /** @param oldest since when the first thing has been due that is not done by then, if any is */
    InTime(Function<Instant, Optional<Instant>> oldest, InstantSource clock, Pace pace) {
        this.oldest = oldest;
        this.clock = clock;
        this.pace = pace;
    }

    @Override
    public Optional<String> trouble() {
        Instant now = clock.instant();
        return oldest.apply(now)
                .map(since -> pace.real(Duration.between(since, now)))
                .filter(late -> late.compareTo(MOST) > 0)
                .map(late -> "what is due is done " + late.toSeconds() + " s late");
    }
}
