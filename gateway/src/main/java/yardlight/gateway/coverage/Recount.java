package yardlight.gateway.coverage;

import java.time.Duration;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;
import yardlight.db.journal.Stored;
import yardlight.gateway.clock.Bell;
import yardlight.gateway.clock.Worker;
import yardlight.gateway.lane.Aftermath;

/**
 * Has the gaps ahead worked out anew whenever the setup has changed, somebody has stopped a line or a day has passed: on a
 * thread of its own, so that the lane does no more than ring a bell. Nothing hangs on it but what pages and texts say of
 * gaps, and so its health is nobody's concern.
 */
@Component
class Recount implements SmartLifecycle, Aftermath {

    private static final Logger LOG = LoggerFactory.getLogger(Recount.class);
    private static final Duration POLL = Duration.ofMinutes(1);

    /** After the lane, whose first transaction finds the setup. */
    private static final int PHASE = 200;

    private final Coverages coverages;
    private final Bell bell = new Bell();
    private final Worker worker = new Worker("coverage");

    Recount(Coverages coverages) {
        this.coverages = coverages;
    }

    @Override
    public void start() {
        worker.start(this::run);
    }

    @Override
    public void stop() {
        worker.stop(bell::ring);
    }

    @Override
    public boolean isRunning() {
        return worker.running();
    }

    @Override
    public int getPhase() {
        return PHASE;
    }

    @Override
    public void stored(Stored stored) {
        if (coverages.stale()) {
            bell.ring();
        }
    }

    private void run() {
        while (worker.running()) {
            try {
                count();
                bell.await(POLL);
            } catch (InterruptedException e) {
                worker.end();
            }
        }
    }

    private void count() {
        try {
            coverages.recount(worker::running);
        } catch (RuntimeException | Error e) {
            LOG.warn("the gaps ahead cannot be worked out now: {}", e.toString());
        }
    }
}
