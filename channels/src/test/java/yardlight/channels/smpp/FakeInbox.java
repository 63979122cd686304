package yardlight.channels.smpp;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import yardlight.channels.Inbox;
import yardlight.channels.Incoming;
import yardlight.channels.Receipt;

/** Takes everything unless told otherwise, and remembers. */
final class FakeInbox implements Inbox {

    interface Waiting {
        void await() throws InterruptedException;
    }

    /** Whether it was taken or not. */
    final List<Incoming> offered = new CopyOnWriteArrayList<>();

    final List<Incoming> texts = new CopyOnWriteArrayList<>();
    final List<Receipt> receipts = new CopyOnWriteArrayList<>();

    volatile boolean taking = true;
    volatile boolean failing;
    volatile Waiting whileTaking = () -> {};

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
