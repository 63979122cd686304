package yardlight.demo.boxes;

import java.time.Duration;
import java.time.Instant;
import yardlight.demo.gateway.GatewayClock;

/** A switch that chatters: {@value #CHANGES} changes in five minutes of the gateway's time, the last one to normal. */
public final class Flutter {

    public static final int CHANGES = 30;
    public static final Duration EVERY = Duration.ofSeconds(10);

    private Flutter() {}

    /** Begins in a thread of its own and comes back at once. */
    public static void start(Place place, String point, GatewayClock clock) {
        Thread thread = new Thread(() -> run(place, point, clock), "flutter-" + place.id());
        thread.setDaemon(true);
        thread.start();
    }

    private static void run(Place place, String point, GatewayClock clock) {
        Instant begin = clock.instant();
        try {
            for (int change = 0; change < CHANGES; change++) {
                clock.awaitInstant(begin.plus(EVERY.multipliedBy(change)));
                place.move(point, change % 2 == 0);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
