package yardlight.gateway.stage;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/** Work that is done one at a time: who comes meanwhile waits for their turn, but not for ever. */
final class Turn {

    private final Duration patience;
    private final Semaphore one = new Semaphore(1, true);

    /** @param patience how long somebody waits */
    Turn(Duration patience) {
        this.patience = patience;
    }

    /** @return empty when others kept it that long, or when who waits is to stop */
    <T> Optional<T> take(Supplier<T> work) {
        if (!mine()) {
            return Optional.empty();
        }
        try {
            return Optional.of(work.get());
        } finally {
            one.release();
        }
    }

    private boolean mine() {
        try {
            return one.tryAcquire(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
