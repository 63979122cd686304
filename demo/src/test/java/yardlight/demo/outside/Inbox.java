package yardlight.demo.outside;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import yardlight.demo.carrier.Carrier;

/** The mail server that the gateways hand over to. It lives in this process, so no kill takes anything from it. */
final class Inbox implements AutoCloseable {

    private final Map<String, List<Long>> taken = new ConcurrentHashMap<>();
    private final CountDownLatch open = new CountDownLatch(1);
    private final AtomicInteger inHand = new AtomicInteger();
    private volatile long millis = Long.MAX_VALUE;
    private final Carrier carrier = Carrier.open(0, address -> true, letter -> take(letter.to()));

    private Inbox() {}

    static Inbox quick() {
        var inbox = new Inbox();
        inbox.takesItsTime(Duration.ZERO);
        return inbox;
    }

    /** One that reads each message and then says nothing, until it is closed. */
    static Inbox stuck() {
        return new Inbox();
    }

    /** From now on each message takes so long to be taken. */
    void takesItsTime(Duration each) {
        millis = each.toMillis();
    }

    /** How many messages it has read and not answered yet. */
    int inHand() {
        return inHand.get();
    }

    int port() {
        return carrier.port();
    }

    private void take(String address) {
        taken.computeIfAbsent(address, to -> new CopyOnWriteArrayList<>()).add(System.nanoTime());
        inHand.incrementAndGet();
        try {
            open.await(millis, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            inHand.decrementAndGet();
        }
    }

    int texts(String address) {
        return taken(address).size();
    }

    /** When, by {@link System#nanoTime}, each text to this address was read. */
    List<Long> taken(String address) {
        return taken.getOrDefault(address, List.of());
    }

    @Override
    public void close() {
        open.countDown();
        carrier.close();
    }
}
