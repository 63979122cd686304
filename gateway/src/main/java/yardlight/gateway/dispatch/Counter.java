package yardlight.gateway.dispatch;

import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import yardlight.db.outbox.Outbox;
import yardlight.db.outbox.Outgoing;

/** Where the notices of one channel go out: a few workers, and no more in hand than keeps them busy. */
final class Counter {

    /** Taken, sent, and waiting to be recorded; recording takes several times as long as sending. */
    private static final int IN_HAND_FOR_EACH = 16;

    private final String channel;
    private final int most;
    private final Outbox outbox;
    private final Sending sending;
    private final InstantSource clock;
    private final Runnable bell;
    private final ExecutorService workers;
    private final AtomicInteger inHand = new AtomicInteger();
    private volatile boolean more;

    Counter(String channel, int workers, Outbox outbox, Sending sending, InstantSource clock, Runnable bell) {
        this.channel = channel;
        this.most = workers * IN_HAND_FOR_EACH;
        this.outbox = outbox;
        this.sending = sending;
        this.clock = clock;
        this.bell = bell;
        var number = new AtomicInteger();
        this.workers = Executors.newFixedThreadPool(
                workers, work -> new Thread(work, channel + "-" + number.incrementAndGet()));
    }

    /** Takes as many notices as there is room for. */
    void take() {
        int room = most - inHand.get();
        if (room < most / 2) {
            return;
        }
        List<Outgoing> claimed = outbox.claim(channel, clock.instant(), room);
        more = claimed.size() == room;
        inHand.addAndGet(claimed.size());
        claimed.forEach(outgoing -> workers.execute(() -> sending.send(outgoing, this::done)));
    }

    private void done() {
        if (inHand.decrementAndGet() <= most / 2 && more) {
            bell.run();
        }
    }

    /** Sends what is in hand and nothing more; waits for it. */
    void close(long millis) throws InterruptedException {
        workers.shutdown();
        workers.awaitTermination(millis, TimeUnit.MILLISECONDS);
    }

    boolean empty() {
        return inHand.get() == 0;
    }
}
