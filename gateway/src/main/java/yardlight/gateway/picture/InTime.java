package yardlight.gateway.picture;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Does one thing at a time and waits for it no longer than so. What is not done by then is left to end by itself, and until
 * it has, nothing else is begun: an interrupt would close the file of an embedded database under everybody.
 */
final class InTime implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(InTime.class);
    private static final long IDLE_SECONDS = 30;

    private final Duration limit;
    private final ThreadPoolExecutor thread =
            new ThreadPoolExecutor(0, 1, IDLE_SECONDS, TimeUnit.SECONDS, new SynchronousQueue<>(), work -> {
                var made = new Thread(work, "picture");
                made.setDaemon(true);
                return made;
            });

    InTime(Duration limit) {
        this.limit = limit;
    }

    /** Empty when it is busy, too slow, or wrong in any way. */
    <T> Optional<T> get(Callable<Optional<T>> work) {
        try {
            Future<Optional<T>> future = thread.submit(work);
            return future.get(limit.toMillis(), TimeUnit.MILLISECONDS);
        } catch (RejectedExecutionException | TimeoutException e) {
            LOG.info("a mail goes out without its picture, which takes too long");
        } catch (ExecutionException e) {
            LOG.warn("a mail goes out without its picture: {}", String.valueOf(e.getCause()));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (RuntimeException | OutOfMemoryError e) {
            LOG.warn("a mail goes out without its picture: {}", e.toString());
        }
        return Optional.empty();
    }

    @Override
    public void close() {
        thread.shutdown();
    }
}
