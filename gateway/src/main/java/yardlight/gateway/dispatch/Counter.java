package yardlight.gateway.dispatch;

import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import yardlight.channels.Channel;
import yardlight.channels.Health;
import yardlight.db.outbox.Outgoing;

/** Where the notices of one channel go out: a few workers, and no more in hand than keeps them busy. */
final class Counter {

    /** Taken, sent, and waiting to be recorded; recording takes several times as long as sending. */
    private static final int IN_HAND_FOR_EACH = 16;

    /** Claimed and not begun: a channel tries for up to a minute, so these wait under a lease that is renewed. */
    private static final int READY_FOR_EACH = 2;

    private final Channel channel;
    private final int size;
    private final int most;
    private final Sending sending;
    private final Runnable bell;
    private final ExecutorService workers;
    private final AtomicInteger inHand = new AtomicInteger();
    private final AtomicInteger ready = new AtomicInteger();
    private final AtomicBoolean knocking = new AtomicBoolean();
    private volatile boolean more;

    Counter(Channel channel, int workers, Sending sending, Runnable bell) {
        this.channel = channel;
        this.size = workers;
        this.most = workers * IN_HAND_FOR_EACH;
        this.sending = sending;
        this.bell = bell;
        var number = new AtomicInteger();
        this.workers = Executors.newFixedThreadPool(
                workers, work -> new Thread(work, channel.name() + "-" + number.incrementAndGet()));
    }

    String channel() {
        return channel.name();
    }

    /** Whether notices can go out here at all. */
    boolean open() {
        return channel.health().state() != Health.State.NOT_CONFIGURED;
    }

    /** Takes as many notices as there is room for, and as the carrier is let have. */
    void take() {
        int room = Math.min(most - inHand.get(), size * READY_FOR_EACH - ready.get());
        int let = room < size ? 0 : sending.carriers().lets(channel(), room, inHand.get());
        if (let > 0) {
            take(let);
        }
    }

    private void take(int room) {
        List<Outgoing> claimed =
                sending.outbox().claim(channel(), sending.clock().instant(), room);
        more = claimed.size() == room;
        claimed.forEach(this::take);
    }

    /** Takes a notice that was claimed already. */
    void take(Outgoing outgoing) {
        inHand.incrementAndGet();
        ready.incrementAndGet();
        workers.execute(() -> {
            begun();
            if (sending.carriers().broken(channel())) {
                sending.giveBack(outgoing, this::done);
            } else {
                sending.send(outgoing, this::done);
            }
        });
    }

    /** Looks whether a carrier that was down is there again, when it is time. */
    void knock() {
        if (sending.carriers().wantsKnock(channel()) && knocking.compareAndSet(false, true)) {
            workers.execute(() -> {
                try {
                    sending.carriers().knocked(channel(), channel.knock());
                } finally {
                    knocking.set(false);
                    bell.run();
                }
            });
        }
    }

    private void begun() {
        if (ready.decrementAndGet() <= size && more) {
            bell.run();
        }
    }

    private void done() {
        if (inHand.decrementAndGet() <= most / 2 && more) {
            bell.run();
        }
    }

    /** Sends what is in hand and nothing more. */
    void close() {
        workers.shutdown();
    }

    boolean awaitEnd(long millis) throws InterruptedException {
        return workers.awaitTermination(millis, TimeUnit.MILLISECONDS);
    }
}
