package yardlight.gateway.watch;

import java.time.Duration;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.availability.ApplicationAvailability;
import org.springframework.boot.availability.ReadinessState;
import org.springframework.context.SmartLifecycle;
import yardlight.gateway.clock.Bell;
import yardlight.gateway.clock.Worker;

/**
 * Goes its round from the start of the gateway to its stop, if another gateway is to watch. If this thread ends, the other
 * one notices: so no health of ours looks after it.
 */
final class Watch implements SmartLifecycle {

    /** After all that the gateway does, and before that when it stops. */
    private static final int PHASE = 500;

    private static final Logger LOG = LoggerFactory.getLogger(Watch.class);
    private static final Duration UNTIL_READY = Duration.ofSeconds(1);
    private static final Duration AFTER_A_MISTAKE = Duration.ofMinutes(1);

    private final Optional<Round> round;
    private final ApplicationAvailability availability;
    private final long began = System.nanoTime();
    private final Bell bell = new Bell();
    private final Worker worker = new Worker("watch");

    Watch(Optional<Round> round, ApplicationAvailability availability) {
        this.round = round;
        this.availability = availability;
    }

    @Override
    public boolean isAutoStartup() {
        return round.isPresent();
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
            try {
                bell.await(turn());
            } catch (InterruptedException e) {
                worker.end();
            }
        }
    }

    /** A start that fails in the end must not have said that all is well, and neither must a stop. */
    private Duration turn() {
        if (availability.getReadinessState() != ReadinessState.ACCEPTING_TRAFFIC) {
            return UNTIL_READY;
        }
        try {
            return round.orElseThrow().go(Duration.ofNanos(System.nanoTime() - began));
        } catch (Throwable mistake) {
            LOG.error("the other gateway is told nothing for now; if this is seen again, restart the gateway", mistake);
            return AFTER_A_MISTAKE;
        }
    }
}
