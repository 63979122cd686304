package yardlight.demo.boxes;

import java.time.Duration;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import yardlight.demo.gateway.GatewayClock;

/** Lets every box give a sign of life as often as the setup promises, until it is closed. */
public final class Heartbeats implements AutoCloseable {

    /** The heartbeat interval of the setup document, in the gateway's time. */
    static final Duration EVERY = Duration.ofMinutes(5);

    private final ScheduledExecutorService beating;

    private Heartbeats(ScheduledExecutorService beating) {
        this.beating = beating;
    }

    public static Heartbeats start(Places places, GatewayClock clock) {
        ScheduledExecutorService beating = Executors.newScheduledThreadPool(2, work -> {
            Thread thread = new Thread(work, "heartbeats");
            thread.setDaemon(true);
            return thread;
        });
        long nanos = clock.real(EVERY).toNanos();
        for (Place place : places.all()) {
            beating.scheduleAtFixedRate(() -> beat(place), 0, nanos, TimeUnit.NANOSECONDS);
        }
        return new Heartbeats(beating);
    }

    private static void beat(Place place) {
        try {
            place.box().heartbeat();
        } catch (IllegalStateException refused) {
            // One refused heartbeat must not end the box's life: the executor would never call it again.
            if (!Thread.currentThread().isInterrupted()) {
                System.err.println("heartbeat of " + place.name() + ": " + refused.getMessage());
            }
        }
    }

    @Override
    public void close() {
        beating.shutdownNow();
    }
}
