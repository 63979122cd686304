package yardlight.channels.mail;

import jakarta.mail.internet.MimeMessage;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
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
    private final ScheduledThreadPoolExecutor clock;
    private final Deque<Idle> idle = new ArrayDeque<>();
    private boolean closed;

    private record Idle(Connection connection, long since, Future<?> end) {}

    /** What came of it, and how far it came. */
    record Exchange(Attempt attempt, Stage stage) {}

    Connections(Office office, Duration idleFor) {
        this.office = office;
        this.idleFor = idleFor;
        clock = new ScheduledThreadPoolExecutor(1, work -> {
            Thread thread = new Thread(work, "mail-limits");
            thread.setDaemon(true);
            return thread;
        });
        clock.setRemoveOnCancelPolicy(true);
    }

    Exchange send(MimeMessage message) {
        long end = System.nanoTime() + office.settings().timeouts().whole().toNanos();
        try {
            if (!places.tryAcquire(end - System.nanoTime(), TimeUnit.NANOSECONDS)) {
                return notBegun(
                        "all " + MOST + " connections to " + office.settings().server() + " are busy");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return notBegun("interrupted before it was sent");
        }
        try {
            return exchange(message, end);
        } finally {
            places.release();
        }
    }

    private Exchange exchange(MimeMessage message, long end) {
        if (isClosed()) {
            return notBegun("the channel is closed");
        }
        Connection connection = takeIdle(end).orElseGet(() -> new Connection(office));
        Attempt attempt = within(end - System.nanoTime(), connection, c -> c.deliver(message));
        if (connection.wentStale()) {
            connection.close();
            connection = new Connection(office);
            attempt = within(end - System.nanoTime(), connection, c -> c.deliver(message));
        }
        if (attempt.outcome() == Attempt.Outcome.ACCEPTED) {
            keep(connection);
        } else {
            connection.close();
        }
        return new Exchange(attempt, connection.stage());
    }

    /** The one used last: the others then get old and are closed. */
    private Optional<Connection> takeIdle(long end) {
        for (Idle next = pop(); next != null; next = pop()) {
            Connection connection = next.connection();
            if (System.nanoTime() - next.since() < ASKED_AFTER.toNanos()) {
                return Optional.of(connection);
            }
            long left = Math.min(end - System.nanoTime(), LONGEST_ASKING.toNanos());
            if (within(left, connection, Connection::isAlive)) {
                return Optional.of(connection);
            }
            connection.close();
        }
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
        Future<?> end = clock.schedule(() -> retire(connection), idleFor.toNanos(), TimeUnit.NANOSECONDS);
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

    /** Does it, but cuts the connection when the time is over. */
    private <T> T within(long nanos, Connection connection, Function<Connection, T> work) {
        Future<?> limit = null;
        try {
            limit = clock.schedule(connection::cut, Math.max(nanos, 0), TimeUnit.NANOSECONDS);
        } catch (RejectedExecutionException e) {
            // Closed meanwhile: no time is left.
            connection.cut();
        }
        try {
            return work.apply(connection);
        } finally {
            if (limit != null) {
                limit.cancel(false);
            }
        }
    }

    @Override
    public void close() {
        synchronized (this) {
            closed = true;
        }
        for (Idle next = pop(); next != null; next = pop()) {
            next.connection().close();
        }
        // What is under way keeps its limit: tasks that were scheduled before still run.
        clock.shutdown();
    }

    private static Exchange notBegun(String why) {
        return new Exchange(Attempt.deferred(why), Stage.GREETING);
    }
}
