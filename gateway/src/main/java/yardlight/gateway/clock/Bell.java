package yardlight.gateway.clock;

import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/** Wakes a thread that rests. However often it rings before the thread looks up, it is woken once. */
public final class Bell {

    private final Semaphore rings = new Semaphore(0);

    /** Also before anybody rests: then the next one who would rest goes on at once. */
    public void ring() {
        rings.release();
    }

    /** Comes back when it rings, and at the latest after so long. */
    public void await(Duration most) throws InterruptedException {
        if (rings.tryAcquire(most.toNanos(), TimeUnit.NANOSECONDS)) {
            rings.drainPermits();
        }
    }
}
