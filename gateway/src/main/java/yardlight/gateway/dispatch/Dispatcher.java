package yardlight.gateway.dispatch;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import yardlight.db.journal.Stored;
import yardlight.gateway.clock.Bell;
import yardlight.gateway.clock.Pulse;
import yardlight.gateway.clock.Pulsing;
import yardlight.gateway.clock.Worker;
import yardlight.gateway.lane.Aftermath;

/**
 * Keeps the counters of all channels supplied: right after the lane has queued something, when a counter has room again,
 * and at the latest after the poll time. Stops by finishing what is in hand.
 */
final class Dispatcher implements SmartLifecycle, Aftermath, Pulsing {

    /** Starts after the lane and stops before it. */
    static final int PHASE = 200;

    private static final Logger LOG = LoggerFactory.getLogger(Dispatcher.class);
    private static final int POLLS_FOR_THE_REST = 20;
    private static final long FINISH_MILLIS = 15_000;

    private final List<Counter> counters;
    private final Sending sending;
    private final Stranded stranded;
    private final Late late;
    private final long pollMillis;
    private final Bell bell = new Bell();
    private final Worker worker = new Worker("dispatch");

    Dispatcher(Sending sending, Late late, DispatchSettings settings) {
        this.sending = sending;
        this.stranded = new Stranded(sending);
        this.late = late;
        this.pollMillis = settings.poll().toMillis();
        this.counters = sending.channels().byName().values().stream()
                .map(channel -> new Counter(channel, settings.workers(), sending, bell::ring))
                .toList();
    }

    @Override
    public void start() {
        worker.start(this::run);
    }

    @Override
    public void stop() {
        if (worker.stop(bell::ring)) {
            counters.forEach(Counter::close);
            finish();
        }
    }

    /** What takes its time now must not be taken by another gateway meanwhile. */
    private void finish() {
        long turns = FINISH_MILLIS / pollMillis;
        try {
            for (Counter counter : counters) {
                while (turns-- > 0 && !counter.awaitEnd(pollMillis)) {
                    renew();
                }
            }
            sending.recorder().stop();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void renew() {
        try {
            sending.outbox().renew();
        } catch (RuntimeException e) {
            LOG.warn("cannot keep what is being sent, another gateway may send it too: {}", e.getMessage());
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

    @Override
    public void stored(Stored stored) {
        if (stored.queued() > 0) {
            bell.ring();
        }
    }

    @Override
    public Pulse pulse() {
        return worker.pulse();
    }

    /** Nothing ends this thread but {@link #stop}: without it nothing goes out. */
    private void run() {
        long rest = System.nanoTime();
        while (worker.running()) {
            worker.beat();
            renew();
            try {
                boolean alsoForTheRest = System.nanoTime() - rest >= 0;
                if (alsoForTheRest) {
                    rest = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(POLLS_FOR_THE_REST * pollMillis);
                }
                look(alsoForTheRest);
            } catch (RuntimeException e) {
                LOG.warn("cannot look into the outbox: {}", e.getMessage());
            } catch (Throwable mistake) {
                LOG.error("looking into the outbox goes on; if this is seen again, restart the gateway", mistake);
            }
            sleep();
        }
    }

    /** The rest is looked at by time and not with each ring of the bell: it costs what waits, not what is ready. */
    private void look(boolean alsoForTheRest) {
        Map<String, Counter> open = new LinkedHashMap<>();
        counters.stream().filter(Counter::open).forEach(counter -> open.put(counter.channel(), counter));
        open.values().forEach(Counter::knock);
        open.values().forEach(Counter::take);
        if (alsoForTheRest) {
            stranded.look(open);
            late.look();
            sending.carriers().compare();
        }
    }

    private void sleep() {
        try {
            bell.await(Duration.ofMillis(pollMillis));
        } catch (InterruptedException e) {
            worker.end();
        }
    }
}
