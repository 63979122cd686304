package yardlight.demo.outside;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.concurrent.locks.LockSupport;

/**
 * Boxes that post all the time, as boxes do: an event that was not answered is posted again under the same id, at the
 * next door if there are several. Each place has one alarm; what comes after the first event repeats it.
 */
final class Fleet {

    private static final int CLIENTS = 8;
    private static final long PAUSE_MILLIS = 20;

    private final List<Integer> ports;
    private final List<String> keys;
    private final AtomicIntegerArray answered;
    private final AtomicIntegerArray begunAt;
    private final AtomicInteger allowed = new AtomicInteger();
    private final AtomicInteger begun = new AtomicInteger();
    private final AtomicInteger kills = new AtomicInteger();
    private final Queue<Integer> wrong = new ConcurrentLinkedQueue<>();
    private final CountDownLatch end = new CountDownLatch(1);
    private final List<Thread> clients = new ArrayList<>();

    /**
     * @param ports of the gateways
     * @param keys of the boxes, one for each place
     */
    Fleet(List<Integer> ports, List<String> keys, long seed) {
        this.ports = List.copyOf(ports);
        this.keys = List.copyOf(keys);
        answered = new AtomicIntegerArray(keys.size());
        begunAt = new AtomicIntegerArray(keys.size());
        for (int i = 0; i < CLIENTS; i++) {
            int client = i;
            clients.add(new Thread(() -> post(client, new Random(seed * CLIENTS + client)), "client-" + i));
        }
        clients.forEach(client -> client.setDaemon(true));
        clients.forEach(Thread::start);
    }

    /** From now on so many more places may have trouble. */
    void allow(int places) {
        allowed.updateAndGet(before -> Math.min(keys.size(), before + places));
    }

    /** A gateway has just been killed. */
    void killed() {
        kills.incrementAndGet();
    }

    /** How many places have posted at all. */
    int begun() {
        return Math.min(begun.get(), keys.size());
    }

    /** How many events of a place were answered with 202. */
    int answered(int place) {
        return answered.get(place);
    }

    /** How many kills there were since the place posted first. */
    int livedThrough(int place) {
        return kills.get() - begunAt.get(place);
    }

    /** Answers that boxes do not expect. */
    List<Integer> wrong() {
        return List.copyOf(wrong);
    }

    private void post(int client, Random random) {
        try {
            for (int number = 0; end.getCount() > 0; number++) {
                int place = place(random);
                if (place < 0) {
                    end.await(PAUSE_MILLIS, TimeUnit.MILLISECONDS);
                } else {
                    untilAnswered(place, client, number);
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** One in four is a new one as long as that is allowed; -1 while there is none at all. */
    private int place(Random random) {
        int before = begun.get();
        if (before < allowed.get() && random.nextInt(4) == 0 && begun.compareAndSet(before, before + 1)) {
            begunAt.set(before, kills.get());
            return before;
        }
        return before == 0 ? -1 : random.nextInt(before);
    }

    /** Goes on past the end: what was posted is to be answered. */
    private void untilAnswered(int place, int client, int number) throws InterruptedException {
        String event = "{\"id\":\"c" + client + "-" + number + "\",\"point\":\"tank\",\"condition\":\"high\","
                + "\"state\":\"active\",\"priority\":\"high\"}";
        for (int tries = 0; !answered(place, event, client + number + tries); tries++) {
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(PAUSE_MILLIS));
        }
    }

    private boolean answered(int place, String event, int door) throws InterruptedException {
        try {
            int status = Http.event(ports.get(Math.floorMod(door, ports.size())), keys.get(place), event);
            if (status == 202) {
                answered.incrementAndGet(place);
                return true;
            }
            if (status != 503) {
                wrong.add(status);
            }
        } catch (IOException nobody) {
            // killed in the middle of it, or not there yet: once more
        }
        return false;
    }

    /** Nothing more is posted but what was not answered yet. */
    void end() {
        end.countDown();
    }

    /** Comes back when every event that was posted is answered. */
    void awaitAnswers() throws InterruptedException {
        end();
        for (Thread client : clients) {
            client.join(TimeUnit.MINUTES.toMillis(2));
            if (client.isAlive()) {
                throw new IllegalStateException(client.getName() + " still waits for an answer");
            }
        }
    }
}
