package yardlight.gateway.dispatch;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Supplier;
import yardlight.db.outbox.Outbox;
import yardlight.db.outbox.Outgoing;

/** Hands out what a test puts in, once, after the mistakes that it is told to make. */
final class FakeOutbox implements Outbox {

    final Queue<Throwable> mistakes = new ConcurrentLinkedQueue<>();
    final Queue<Outgoing> ready = new ConcurrentLinkedQueue<>();
    final List<Outgoing> waiting = new CopyOnWriteArrayList<>();
    final List<Outgoing> done = new CopyOnWriteArrayList<>();
    final List<Outgoing> givenBack = new CopyOnWriteArrayList<>();
    Supplier<Boolean> wanted = () -> true;

    @Override
    public List<Outgoing> claim(String channel, Instant now, int limit) {
        err();
        var claimed = new ArrayList<Outgoing>();
        for (Outgoing next = ready.poll(); next != null; next = ready.poll()) {
            claimed.add(next);
        }
        return claimed;
    }

    @Override
    public List<Outgoing> claimOthers(Collection<String> channels, Instant now, int limit) {
        return List.of();
    }

    @Override
    public boolean wanted(Outgoing outgoing) {
        return wanted.get();
    }

    @Override
    public void renew() {}

    @Override
    public boolean followed(Outgoing outgoing) {
        return false;
    }

    @Override
    public void done(Outgoing outgoing) {
        done.add(outgoing);
    }

    @Override
    public void giveBack(Outgoing outgoing) {
        givenBack.add(outgoing);
        err();
    }

    @Override
    public List<Outgoing> waiting(Instant from, Instant to, int limit) {
        return waiting.stream()
                .filter(one -> one.queuedAt().isAfter(from) && !one.queuedAt().isAfter(to))
                .limit(limit)
                .toList();
    }

    @Override
    public Optional<Instant> nextRung(Outgoing outgoing) {
        return Optional.empty();
    }

    @Override
    public Optional<Instant> next(Instant now) {
        return Optional.empty();
    }

    private void err() {
        Throwable mistake = mistakes.poll();
        if (mistake instanceof RuntimeException one) {
            throw one;
        }
        if (mistake instanceof Error one) {
            throw one;
        }
    }
}
