package yardlight.channels;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Takes everything unless told otherwise, and remembers. */
public final class FakeInbox implements Inbox {

    public interface Waiting {
        void await() throws InterruptedException;
    }

    /** Whether it was taken or not. */
    public final List<Incoming> offered = new CopyOnWriteArrayList<>();

    public final List<Incoming> texts = new CopyOnWriteArrayList<>();
    public final List<Receipt> receipts = new CopyOnWriteArrayList<>();

    public volatile boolean taking = true;
    public volatile boolean failing;
    public volatile Waiting whileTaking = () -> {};

    @Override
    public boolean take(Incoming text) {
        offered.add(text);
        decide();
        if (taking) {
            texts.add(text);
        }
        return taking;
    }

    @Override
    public boolean take(Receipt receipt) {
        decide();
        if (taking) {
            receipts.add(receipt);
        }
        return taking;
    }

    private void decide() {
        try {
            whileTaking.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        if (failing) {
            throw new IllegalStateException("the database is away");
        }
    }
}
