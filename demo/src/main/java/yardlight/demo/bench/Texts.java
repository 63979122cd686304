package yardlight.demo.bench;

import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import yardlight.demo.carrier.Letter;

/** When the mail server had which text: the first and the second to each address. */
final class Texts {

    private final Map<String, Long> first = new ConcurrentHashMap<>();
    private final Map<String, Long> second = new ConcurrentHashMap<>();
    private final AtomicInteger taken = new AtomicInteger();

    void take(Letter letter) {
        long now = System.nanoTime();
        if (first.putIfAbsent(letter.to(), now) != null) {
            second.putIfAbsent(letter.to(), now);
        }
        taken.incrementAndGet();
    }

    int taken() {
        return taken.get();
    }

    /** @throws IllegalStateException if it has none */
    long first(String address) {
        return known(first, address);
    }

    /** @throws IllegalStateException if it has none */
    long second(String address) {
        return known(second, address);
    }

    private static long known(Map<String, Long> times, String address) {
        Long time = times.get(address);
        if (time == null) {
            throw new IllegalStateException("a text did not arrive: " + address);
        }
        return time;
    }

    /** Waits for the second text to an address. */
    void awaitSecond(String address, Duration limit) {
        long end = System.nanoTime() + limit.toNanos();
        while (!second.containsKey(address) && System.nanoTime() < end) {
            LockSupport.parkNanos(10_000_000);
        }
    }

    /** Waits until none has come for a while. */
    void settle(Duration quiet, Duration limit) {
        long end = System.nanoTime() + limit.toNanos();
        int before = -1;
        while (before != taken.get() && System.nanoTime() < end) {
            before = taken.get();
            LockSupport.parkNanos(quiet.toNanos());
        }
    }

    /** Waits until so many were taken in all. */
    void await(int count, Duration limit) {
        long end = System.nanoTime() + limit.toNanos();
        while (taken.get() < count) {
            if (System.nanoTime() > end) {
                throw new IllegalStateException(taken.get() + " of " + count + " texts arrived within " + limit);
            }
            LockSupport.parkNanos(10_000_000);
        }
    }
}
