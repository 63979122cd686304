package yardlight.demo.outside;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import yardlight.demo.carrier.Carrier;

/** The mail server that the gateways hand over to. It lives in this process, so no kill takes anything from it. */
final class Inbox implements AutoCloseable {

    private final Map<String, List<Long>> taken = new ConcurrentHashMap<>();
    private final CountDownLatch open;
    private final Carrier carrier = Carrier.open(0, address -> true, letter -> take(letter.to()));

    private Inbox(int holds) {
        open = new CountDownLatch(holds);
    }

    static Inbox quick() {
        return new Inbox(0);
    }

    /** One that reads each message and then says nothing, until it is closed. */
    static Inbox stuck() {
        return new Inbox(1);
    }

    int port() {
        return carrier.port();
    }

    private void take(String address) {
        taken.computeIfAbsent(address, to -> new CopyOnWriteArrayList<>()).add(System.nanoTime());
        try {
            open.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
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
