package yardlight.channels;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

/** A channel for tests: does what it is told, takes everything otherwise, and remembers. Keeps {@link ChannelContract}. */
public final class FakeChannel implements Channel {

    private final String name;
    private final boolean configured;
    private final List<Message> tried = new CopyOnWriteArrayList<>();
    private final List<Message> taken = new CopyOnWriteArrayList<>();
    private volatile Function<Message, Attempt> outside = message -> Attempt.accepted("taken");
    private final AtomicInteger knocks = new AtomicInteger();
    private volatile Optional<String> trouble = Optional.empty();
    private volatile Optional<String> away = Optional.empty();
    private volatile boolean closed;

    private FakeChannel(String name, boolean configured) {
        this.name = name;
        this.configured = configured;
    }

    public static FakeChannel named(String name) {
        return new FakeChannel(name, true);
    }

    public static FakeChannel notConfigured(String name) {
        return new FakeChannel(name, false);
    }

    /** From now on the outside answers so. */
    public FakeChannel answering(Function<Message, Attempt> answer) {
        outside = answer;
        return this;
    }

    /** From now on the outside answers so. */
    public FakeChannel answering(Attempt answer) {
        return answering(message -> answer);
    }

    /** From now on the outside takes everything, but not before the latch is open; at most as slow as a channel may be. */
    public FakeChannel takingAfter(CountDownLatch open) {
        return answering(message -> {
            try {
                open.await(30, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            return Attempt.accepted("250 OK");
        });
    }

    /** From now on {@link #health()} says that nothing gets out, for this reason; empty: all is well again. */
    public FakeChannel troubled(Optional<String> why) {
        trouble = why;
        return this;
    }

    /** From now on the carrier takes nothing from anybody, for this reason. */
    public FakeChannel away(String why) {
        away = Optional.of(why);
        return this;
    }

    /** The carrier is there again. */
    public FakeChannel back() {
        away = Optional.empty();
        return this;
    }

    /** How often somebody knocked. */
    public int knocks() {
        return knocks.get();
    }

    /** Every message that was sent with an address that passes and while set up, whatever came of it. */
    public List<Message> tried() {
        return List.copyOf(tried);
    }

    /** What the outside has, or may have: accepted and unknown. */
    public List<Message> taken() {
        return List.copyOf(taken);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Attempt send(Message message) {
        Optional<String> complaint = complaintAbout(message.address());
        if (complaint.isPresent()) {
            return Attempt.refused(complaint.get());
        }
        if (!configured || closed) {
            return Attempt.deferred(closed ? "closed" : "not set up");
        }
        tried.add(message);
        Attempt attempt =
                away.map(why -> Attempt.deferred(why).forEveryMessage()).orElseGet(() -> outside.apply(message));
        switch (attempt.outcome()) {
            case ACCEPTED, UNKNOWN -> taken.add(message);
            case REFUSED, DEFERRED -> {}
        }
        return attempt;
    }

    @Override
    public Optional<String> complaintAbout(String address) {
        return address.matches("[!-~&&[^,;]]{1,254}") ? Optional.empty() : Optional.of("not one address: " + address);
    }

    @Override
    public Optional<String> knock() {
        knocks.incrementAndGet();
        return !configured || closed ? Optional.of(closed ? "closed" : "not set up") : away;
    }

    @Override
    public Health health() {
        if (!configured) {
            return new Health(Health.State.NOT_CONFIGURED, name + " is not set up");
        }
        return trouble.or(() -> away)
                .map(why -> new Health(Health.State.TROUBLED, why))
                .orElse(new Health(Health.State.READY, name + " works"));
    }

    @Override
    public void close() {
        closed = true;
    }
}
