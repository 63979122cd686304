package yardlight.channels.mail;

import java.time.Duration;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/**
 * Ends what takes too long, from a thread of its own.
 *
 * <p>A read timeout is not enough: a server that sends one byte now and then never runs into it.
 */
final class Limits implements AutoCloseable {

    private final ScheduledThreadPoolExecutor clock;

    Limits() {
        clock = new ScheduledThreadPoolExecutor(1, work -> {
            Thread thread = new Thread(work, "mail-limits");
            thread.setDaemon(true);
            return thread;
        });
        clock.setRemoveOnCancelPolicy(true);
    }

    /** Does the work, but cuts the connection when the time is over. */
    <T> T within(long nanos, Connection connection, Function<Connection, T> work) {
        Future<?> end = null;
        try {
            end = clock.schedule(connection::cut, Math.max(nanos, 0), TimeUnit.NANOSECONDS);
        } catch (RejectedExecutionException e) {
            // Closed meanwhile: no time is left.
            connection.cut();
        }
        try {
            return work.apply(connection);
        } finally {
            if (end != null) {
                end.cancel(false);
            }
        }
    }

    Future<?> after(Duration length, Runnable work) {
        return clock.schedule(work, length.toNanos(), TimeUnit.NANOSECONDS);
    }

    /** Takes nothing more on; what is under way keeps its limit. */
    @Override
    public void close() {
        clock.shutdown();
    }
}
