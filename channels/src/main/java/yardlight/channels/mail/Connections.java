package yardlight.channels.mail;

import jakarta.mail.internet.MimeMessage;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import yardlight.channels.Attempt;

/**
 * Connections to one server, kept open and used again: at most four, for more do not make it faster. One that has been
 * idle is asked whether the server is still there, and one that has been idle for long is closed.
 */
final class Connections implements AutoCloseable {

    static final int MOST = 4;

    /** Shorter than servers and routers on the way wait as a rule. */
    static final Duration IDLE = Duration.ofSeconds(30);

    private static final Duration ASKED_AFTER = Duration.ofSeconds(1);
    private static final Duration LONGEST_ASKING = Duration.ofSeconds(3);

    private final Office office;
    private final Duration idleFor;
    private final Semaphore places = new Semaphore(MOST, true);
    private final Limits limits = new Limits();
    private final Deque<Idle> idle = new ArrayDeque<>();
    private boolean closed;
    private volatile Optional<String> trouble = Optional.empty();

    private record Idle(Connection connection, long since, Future<?> end) {}

    Connections(Office office, Duration idleFor) {
        this.office = office;
        this.idleFor = idleFor;
    }

    Office office() {
        return office;
    }

    /** Why nothing gets out, as far as the last conversation told; empty if it did. */
    Optional<String> trouble() {
        return trouble;
    }

    Attempt send(MimeMessage message) {
        Duration whole = office.settings().timeouts().whole();
        long end = System.nanoTime() + whole.toNanos();
        try {
            if (!places.tryAcquire(whole.toNanos(), TimeUnit.NANOSECONDS)) {
                return Attempt.deferred(
                        "all " + MOST + " connections to " + office.settings().server() + " are busy");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Attempt.deferred("interrupted before it was sent");
        }
        try {
            return isClosed() ? Attempt.deferred("the channel is closed") : exchange(message, end);
        } finally {
            places.release();
        }
    }

    private Attempt exchange(MimeMessage message, long end) {
        Connection connection = takeIdle(end).orElseGet(() -> new Connection(office));
        Attempt attempt = limits.within(end - System.nanoTime(), connection, c -> c.deliver(message));
        if (connection.wentStale()) {
            connection.close();
            connection = new Connection(office);
            attempt = limits.within(end - System.nanoTime(), connection, c -> c.deliver(message));
        }
        trouble = attempt.general() ? Optional.of(attempt.detail()) : Optional.empty();
        // Last of all: once it is kept, another thread may be talking over it.
        if (attempt.outcome() == Attempt.Outcome.ACCEPTED) {
            keep(connection);
        } else {
            connection.close();
        }
        return attempt;
    }

    /** Opens one more connection, up to the point at which a message could be sent, and takes leave again. */
    Optional<String> knock() {
        if (isClosed()) {
            return Optional.of("the channel is closed");
        }
        var connection = new Connection(office);
        try {
            long whole = office.settings().timeouts().whole().toNanos();
            trouble = limits.within(whole, connection, Connection::knock);
            return trouble;
        } finally {
            connection.close();
        }
    }

    /** The one used last: the others then get old and are closed. When one has died so have the others, most likely. */
    private Optional<Connection> takeIdle(long end) {
        Idle last = pop();
        if (last == null) {
            return Optional.empty();
        }
        if (System.nanoTime() - last.since() < ASKED_AFTER.toNanos()) {
            return Optional.of(last.connection());
        }
        long left = Math.min(end - System.nanoTime(), LONGEST_ASKING.toNanos());
        if (limits.within(left, last.connection(), Connection::isAlive)) {
            return Optional.of(last.connection());
        }
        last.connection().close();
        closeIdle();
        return Optional.empty();
    }

    private synchronized Idle pop() {
        Idle last = idle.pollLast();
        if (last != null) {
            last.end().cancel(false);
        }
        return last;
    }

    private synchronized void keep(Connection connection) {
        if (closed) {
            connection.close();
            return;
        }
        Future<?> end = limits.after(idleFor, () -> retire(connection));
        idle.addLast(new Idle(connection, System.nanoTime(), end));
    }

    private void retire(Connection connection) {
        boolean unused;
        synchronized (this) {
            unused = idle.removeIf(one -> one.connection() == connection);
        }
        if (unused) {
            connection.close();
        }
    }

    private synchronized boolean isClosed() {
        return closed;
    }

    @Override
    public void close() {
        synchronized (this) {
            closed = true;
        }
        closeIdle();
        limits.close();
    }

    private void closeIdle() {
        for (Idle next = pop(); next != null; next = pop()) {
            next.connection().close();
        }
    }
}
