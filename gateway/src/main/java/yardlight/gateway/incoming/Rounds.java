package yardlight.gateway.incoming;

import java.time.Duration;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
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

    /** A carrier that hangs must not take the time in which the dispatcher and the lane finish what is in hand. */
    private static final Duration TO_STOP = Duration.ofSeconds(5);

    private final Consumer<BooleanSupplier> look;
    private final Bell bell = new Bell();
    private final Worker worker;

    /**
     * @param look is told whether it is to go on
     */
    Rounds(String name, Consumer<BooleanSupplier> look) {
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
        worker.stop(bell::ring, TO_STOP);
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
                look.accept(worker::running);
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
