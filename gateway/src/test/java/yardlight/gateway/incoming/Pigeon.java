package yardlight.gateway.incoming;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import yardlight.channels.Attempt;
import yardlight.channels.Channel;
import yardlight.channels.Health;
import yardlight.channels.Inbox;
import yardlight.channels.Incoming;
import yardlight.channels.Message;
import yardlight.channels.Receipt;
import yardlight.channels.Receiver;

/** A channel that can be answered: what it carries is remembered, and what comes back is what a test says. */
final class Pigeon implements Channel, Receiver {

    final List<Message> carried = new CopyOnWriteArrayList<>();
    private volatile Inbox inbox;

    /** Somebody writes. Comes back with whether it was taken. */
    boolean brings(String id, String from, String text) {
        return inbox.take(new Incoming(name(), id, from, text, Instant.EPOCH));
    }

    /** The carrier says what became of a message that it took. */
    boolean says(Message message, Receipt.Fate fate) {
        return inbox.take(new Receipt(name(), reference(message), fate, "in the carrier's words", Instant.EPOCH));
    }

    @Override
    public String name() {
        return "pigeon";
    }

    @Override
    public Attempt send(Message message) {
        carried.add(message);
        return Attempt.accepted("taken", reference(message));
    }

    private static String reference(Message message) {
        return "ring-" + message.id();
    }

    @Override
    public Optional<String> knock() {
        return Optional.empty();
    }

    @Override
    public Optional<String> complaintAbout(String address) {
        return Optional.empty();
    }

    @Override
    public void listen(Inbox where) {
        inbox = where;
    }

    @Override
    public Health health() {
        return new Health(Health.State.READY, "it flies");
    }

    @Override
    public void close() {}
}
