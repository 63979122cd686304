package yardlight.gateway.due;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.db.due.Due;
import yardlight.db.due.DueKey;
import yardlight.db.due.Dues;
import yardlight.escalation.Answer;
import yardlight.gateway.lane.LaneBusy;

/** One look: claims what is due, hands it to the lane, and waits until all of it is stored. */
final class Sweep {

    /** What a sweep came to. */
    enum Result {
        /** There may be more. */
        FULL,
        DONE,
        /** The lane takes nothing at present. */
        BUSY
    }

    private static final Logger LOG = LoggerFactory.getLogger(Sweep.class);
    private static final int MOST = 500;
    private static final Duration AFTER_A_MISTAKE = Duration.ofSeconds(5);

    private final Dues dues;
    private final Stimuli stimuli;
    private final InstantSource clock;
    private final Timer lag;
    private final Map<DueKey, Instant> mistakes = new LinkedHashMap<>();

    Sweep(Dues dues, Stimuli stimuli, InstantSource clock, MeterRegistry registry) {
        this.dues = dues;
        this.stimuli = stimuli;
        this.clock = clock;
        this.lag = Timer.builder("yardlight.due.lag")
                .description(
                        "From the time at which something was due to the time at which it was done, stored included")
                .register(registry);
    }

    Result run() throws InterruptedException {
        Instant now = clock.instant();
        forgive(now);
        List<Due> claimed = dues.claim(now, MOST);
        var open = new LinkedHashSet<>(claimed);
        try {
            if (!settle(claimed, open)) {
                return Result.BUSY;
            }
        } catch (Throwable mistake) {
            dues.giveBack(open.stream().map(Due::key).toList());
            throw mistake;
        }
        return claimed.size() == MOST ? Result.FULL : Result.DONE;
    }

    /** Takes out of {@code open} what is settled; false when the lane took something not. */
    private boolean settle(List<Due> claimed, Set<Due> open) throws InterruptedException {
        Map<Due, CompletableFuture<Answer>> handed = new LinkedHashMap<>();
        claimed.forEach(due -> handed.put(due, stimuli.tell(due.key())));
        boolean taken = true;
        for (Map.Entry<Due, CompletableFuture<Answer>> one : handed.entrySet()) {
            taken &= settle(one.getKey(), one.getValue());
            open.remove(one.getKey());
        }
        return taken;
    }

    /** When the next thing is due, if anything is. */
    Optional<Instant> next() {
        return dues.next(clock.instant());
    }

    /** False when the lane took it not. */
    private boolean settle(Due due, CompletableFuture<Answer> stored) throws InterruptedException {
        List<DueKey> key = List.of(due.key());
        try {
            stored.get();
            dues.done(key);
            lag.record(Duration.between(due.at(), clock.instant()));
            return true;
        } catch (ExecutionException e) {
            if (e.getCause() instanceof LaneBusy) {
                dues.giveBack(key);
                return false;
            }
            LOG.error("{} stays due and is tried again in {}", due, AFTER_A_MISTAKE, e.getCause());
            mistakes.put(due.key(), clock.instant().plus(AFTER_A_MISTAKE));
            return true;
        }
    }

    /** What failed by a mistake of ours stays due, and is not tried again at once. */
    private void forgive(Instant now) {
        var over = new ArrayList<DueKey>();
        mistakes.forEach((key, until) -> {
            if (!until.isAfter(now)) {
                over.add(key);
            }
        });
        over.forEach(mistakes::remove);
        if (!over.isEmpty()) {
            dues.giveBack(over);
        }
    }
}
