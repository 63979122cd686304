package yardlight.gateway.due;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import yardlight.db.journal.Stored;
import yardlight.gateway.clock.Bell;
import yardlight.gateway.clock.Pace;
import yardlight.gateway.clock.Pulse;
import yardlight.gateway.clock.Pulsing;
import yardlight.gateway.clock.Worker;
import yardlight.gateway.lane.Aftermath;

/** Sweeps until the gateway stops: after the poll time, or as soon as the next thing is due if that is earlier. */
final class DueLoop implements SmartLifecycle, Aftermath, Pulsing {

    /** Starts after the lane and stops before it. */
    static final int PHASE = 200;

    private static final Logger LOG = LoggerFactory.getLogger(DueLoop.class);

    private final Sweep sweep;
    private final InstantSource clock;
    private final Pace pace;
    private final Duration poll;
    private final Bell bell = new Bell();
    private volatile Instant nextDue = Instant.MAX;
    private final Worker worker = new Worker("due");

    DueLoop(Sweep sweep, InstantSource clock, Pace pace, DueSettings settings) {
        this.sweep = sweep;
        this.clock = clock;
        this.pace = pace;
        this.poll = settings.poll();
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

    /** Something was stored that is due before everything known so far: the sleep may have to be shorter. */
    @Override
    public void stored(Stored stored) {
        if (stored.due().filter(nextDue::isAfter).isPresent()) {
            bell.ring();
        }
    }

    @Override
    public Pulse pulse() {
        return worker.pulse();
    }

    /** Nothing ends this thread but {@link #stop}: without it no call goes on. */
    private void run() {
        while (worker.running()) {
            worker.beat();
            try {
                if (sweep.run() != Sweep.Result.FULL) {
                    sleep();
                }
            } catch (InterruptedException e) {
                worker.end();
            } catch (RuntimeException e) {
                LOG.warn("cannot look for what is due: {}", e.getMessage());
                pause(poll);
            } catch (Throwable mistake) {
                LOG.error("looking for what is due goes on; if this is seen again, restart the gateway", mistake);
                pause(poll);
            }
        }
    }

    private void sleep() throws InterruptedException {
        Optional<Instant> next = sweep.next();
        nextDue = next.orElse(Instant.MAX);
        Duration wait = next.map(
                        at -> pace.real(Duration.between(clock.instant(), at)).plusMillis(1))
                .filter(soon -> soon.compareTo(poll) < 0)
                .orElse(poll);
        bell.await(wait);
    }

    private void pause(Duration wait) {
        try {
            bell.await(wait);
        } catch (InterruptedException e) {
            worker.end();
        }
    }
}
