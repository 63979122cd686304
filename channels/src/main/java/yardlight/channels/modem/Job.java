package yardlight.channels.modem;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;

/** Something to be done with the modem, by the thread that owns it, and waited for by another. */
final class Job<T> {

    /** What is done. */
    interface Work<T> {

        /** A {@link Gone} if nothing of it can have been done. */
        T with(Dialogue dialogue) throws Gone;
    }

    private final Work<T> work;
    private final CompletableFuture<T> result = new CompletableFuture<>();
    private final AtomicBoolean begun = new AtomicBoolean();

    Job(Work<T> work) {
        this.work = work;
    }

    /** Does it, unless whoever waited has given up. */
    void run(Dialogue dialogue) {
        if (begun.compareAndSet(false, true)) {
            try {
                result.complete(work.with(dialogue));
            } catch (Gone e) {
                dialogue.breakOff(e.getMessage());
                result.completeExceptionally(e);
            } catch (RuntimeException e) {
                dialogue.breakOff(e.toString());
                result.completeExceptionally(e);
            }
        }
    }

    /** It will not be done. */
    void cancel(String why) {
        if (begun.compareAndSet(false, true)) {
            result.completeExceptionally(new Gone(why));
        }
    }

    /**
     * Waits for it to begin, and once it has, for its end.
     *
     * @param begin how long to wait before it has begun
     * @param end how long to wait from then on
     * @return empty if it has begun and its end has not come
     * @throws Gone if nothing of it was done, as there is no modem
     * @throws NotReady if nothing of it was done, as others were before it
     */
    Optional<T> await(Duration begin, Duration end) throws Gone, NotReady {
        try {
            return Optional.of(result.get(begin.toMillis(), TimeUnit.MILLISECONDS));
        } catch (TimeoutException e) {
            if (begun.compareAndSet(false, true)) {
                throw new NotReady("the modem has not come to it in time");
            }
            return last(end);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            cancel("interrupted before it was sent");
            return now();
        } catch (ExecutionException e) {
            throw gone(e);
        }
    }

    private Optional<T> last(Duration end) throws Gone {
        try {
            return Optional.of(result.get(end.toMillis(), TimeUnit.MILLISECONDS));
        } catch (TimeoutException e) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return now();
        } catch (ExecutionException e) {
            throw gone(e);
        }
    }

    /** For one who was interrupted and cannot wait: what there is. */
    private Optional<T> now() throws Gone {
        if (!result.isDone()) {
            return Optional.empty();
        }
        try {
            return Optional.of(result.join());
        } catch (RuntimeException e) {
            throw new Gone(
                    String.valueOf(
                            e.getCause() == null ? e.getMessage() : e.getCause().getMessage()),
                    e);
        }
    }

    private static Gone gone(ExecutionException e) {
        return e.getCause() instanceof Gone gone ? gone : new Gone(String.valueOf(e.getCause()), e);
    }
}
