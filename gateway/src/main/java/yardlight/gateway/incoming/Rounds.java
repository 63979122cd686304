package yardlight.gateway.incoming;

import java.time.Duration;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import yardlight.gateway.clock.Bell;
import yardlight.gateway.clock.Worker;

/**
 * Looks after something: at once when it is woken, and every second for what another gateway left. Not among the threads that
 * everything depends on: a carrier that takes its time holds up answers, but no alarm.
 */
final class Rounds implements SmartLifecycle {

    /** Starts after the lane, to which things are handed in, and stops before it. */
    private static final int PHASE = 300;

    private static final Logger LOG = LoggerFactory.getLogger(Rounds.class);
    private static final Duration LOOK = Duration.ofSeconds(1);

    private final Runnable look;
    private final Bell bell = new Bell();
    private final Worker worker;

    Rounds(String name, Runnable look) {
        this.look = look;
        this.worker = new Worker(name);
    }

    void wake() {
        bell.ring();
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
            bell.await(LOOK);
        } catch (InterruptedException e) {
            worker.end();
        }
    }
}
