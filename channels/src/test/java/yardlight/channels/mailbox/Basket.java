package yardlight.channels.mailbox;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Predicate;
import yardlight.channels.Inbox;
import yardlight.channels.Incoming;
import yardlight.channels.Receipt;

/** Takes everything unless told otherwise, and remembers. */
final class Basket implements Inbox {

    /** Whether it was taken or not. */
    final List<Incoming> offered = new CopyOnWriteArrayList<>();

    final List<Incoming> texts = new CopyOnWriteArrayList<>();
    final List<Receipt> receipts = new CopyOnWriteArrayList<>();

    volatile Predicate<Incoming> taking = text -> true;

    @Override
    public boolean take(Incoming text) {
        offered.add(text);
        boolean taken = taking.test(text);
        if (taken) {
            texts.add(text);
        }
        return taken;
    }

    @Override
    public boolean take(Receipt receipt) {
        receipts.add(receipt);
        return true;
    }
}
