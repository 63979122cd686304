package yardlight.gateway.dispatch;

import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.db.outbox.Outbox;
import yardlight.db.outbox.Outgoing;
import yardlight.gateway.lane.Intake;
import yardlight.gateway.lane.LaneBusy;
import yardlight.gateway.lane.Tried;

/**
 * Has the lane store what came of an attempt, and does not let go before it is: an outcome that is not on record would
 * be sent again.
 */
final class Recorder {

    private static final Logger LOG = LoggerFactory.getLogger(Recorder.class);
    private static final Duration BUSY = Duration.ofMillis(250);
    private static final Duration MISTAKE = Duration.ofSeconds(10);

    private final Intake intake;
    private final Outbox outbox;
    private volatile boolean stopping;

    Recorder(Intake intake, Outbox outbox) {
        this.intake = intake;
        this.outbox = outbox;
    }

    /** Runs {@code then} once it is stored, or given up because the gateway stops. */
    void record(Outgoing outgoing, Tried tried, Runnable then) {
        intake.put(tried).whenComplete((answer, failure) -> {
            if (failure == null) {
                done(outgoing, then);
            } else if (stopping) {
                LOG.warn("not on record, it may be sent again: {}", tried.attempt());
                then.run();
            } else {
                later(outgoing, tried, then, failure);
            }
        });
    }

    private void done(Outgoing outgoing, Runnable then) {
        try {
            outbox.done(outgoing);
        } finally {
            then.run();
        }
    }

    void stop() {
        stopping = true;
    }

    private void later(Outgoing outgoing, Tried tried, Runnable then, Throwable failure) {
        boolean busy = failure instanceof LaneBusy;
        if (!busy) {
            LOG.error("cannot be recorded, trying on: {}", tried.attempt(), failure);
        }
        Duration wait = busy ? BUSY : MISTAKE;
        CompletableFuture.delayedExecutor(wait.toMillis(), TimeUnit.MILLISECONDS)
                .execute(() -> record(outgoing, tried, then));
    }
}
