package yardlight.gateway.dispatch;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import yardlight.channels.Channel;
import yardlight.channels.Health;
import yardlight.db.journal.Stored;
import yardlight.gateway.lane.Aftermath;

/**
 * Keeps the counters of all channels supplied: right after the lane has queued something, when a counter has room again,
 * and at the latest after the poll time. Stops by finishing what is in hand.
 */
final class Dispatcher implements SmartLifecycle, Aftermath {

    /** Starts after the lane and stops before it. */
    static final int PHASE = 200;

    private static final Logger LOG = LoggerFactory.getLogger(Dispatcher.class);
    private static final int LOOKS_FOR_EACH_STRANDED = 20;
    private static final long FINISH_MILLIS = 15_000;

    private final Map<String, Channel> channels;
    private final Map<String, Counter> counters = new LinkedHashMap<>();
    private final Stranded stranded;
    private final Recorder recorder;
    private final long pollMillis;
    private final Semaphore bell;
    private volatile boolean running;
    private Thread thread;

    Dispatcher(
            Map<String, Channel> channels,
            Map<String, Counter> counters,
            Stranded stranded,
            Recorder recorder,
            DispatchSettings settings,
            Semaphore bell) {
        this.channels = Map.copyOf(channels);
        this.counters.putAll(counters);
        this.stranded = stranded;
        this.recorder = recorder;
        this.pollMillis = settings.poll().toMillis();
        this.bell = bell;
    }

    @Override
    public void start() {
        running = true;
        thread = new Thread(this::run, "dispatch");
        thread.start();
    }

    @Override
    public void stop() {
        running = false;
        bell.release();
        try {
            thread.join();
            for (Counter counter : counters.values()) {
                counter.close(FINISH_MILLIS);
            }
            recorder.stop();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public boolean isRunning() {
        return running;
    }

    @Override
    public int getPhase() {
        return PHASE;
    }

    @Override
    public void stored(Stored stored) {
        if (stored.queued() > 0) {
            bell.release();
        }
    }

    private void run() {
        int looks = 0;
        while (running) {
            try {
                List<String> served = served();
                served.forEach(name -> counters.get(name).take());
                if (looks++ % LOOKS_FOR_EACH_STRANDED == 0) {
                    stranded.look(served);
                }
            } catch (RuntimeException e) {
                LOG.warn("cannot look into the outbox: {}", e.getMessage());
            }
            sleep();
        }
    }

    private List<String> served() {
        return channels.values().stream()
                .filter(channel -> channel.health().state() != Health.State.NOT_CONFIGURED)
                .map(Channel::name)
                .toList();
    }

    private void sleep() {
        try {
            if (bell.tryAcquire(pollMillis, TimeUnit.MILLISECONDS)) {
                bell.drainPermits();
            }
        } catch (InterruptedException e) {
            running = false;
        }
    }
}
