package yardlight.gateway.incoming;

import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import yardlight.gateway.clock.Worker;

/**
 * Looks after something: at once when it is woken, and every second for what another gateway left. Not among the threads that
 * everything depends on: a carrier that takes its time holds up answers, but no alarm.
 */
final class Rounds implements SmartLifecycle {

    /** Starts after the lane, to which things are handed in, and stops before it. */
    private static final int PHASE = 300;

    private static final Logger LOG = LoggerFactory.getLogger(Rounds.class);
    private static final long LOOK_MILLIS = 1_000;

    private final Runnable look;
    private final Semaphore bell = new Semaphore(0);
    private final Worker worker;

    Rounds(String name, Runnable look) {
        this.look = look;
        this.worker = new Worker(name);
    }

    void wake() {
        bell.release();
    }

    @Override
    public void start() {
        worker.start(this::run);
    }

    @Override
    public void stop() {
        try {
            worker.stop(bell::release);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public boolean isRunning() {
        return worker.running();
    }

    @Override
    public int getPhase() {
        return PHASE;
    }

    private void run() {
        while (worker.running()) {
            worker.beat();
            try {
                look.run();
            } catch (RuntimeException e) {
                LOG.warn("cannot look after what came in, it is tried again: {}", e.getMessage());
            } catch (Throwable mistake) {
                LOG.error("looking after what came in goes on; if this is seen again, restart the gateway", mistake);
            }
            rest();
        }
    }

    private void rest() {
        try {
            if (bell.tryAcquire(LOOK_MILLIS, TimeUnit.MILLISECONDS)) {
                bell.drainPermits();
            }
        } catch (InterruptedException e) {
            worker.end();
        }
    }
}
