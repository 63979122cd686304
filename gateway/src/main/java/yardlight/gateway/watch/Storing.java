package yardlight.gateway.watch;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import yardlight.gateway.lane.LaneProbe;

/** Whether things are stored: hands in one that is empty, and waits until it is on disk. */
final class Storing implements Vital {

    private final LaneProbe lane;
    private final Duration patience;

    Storing(LaneProbe lane, Duration patience) {
        this.lane = lane;
        this.patience = patience;
    }

    @Override
    public Optional<String> trouble() {
        try {
            lane.probe().get(patience.toNanos(), TimeUnit.NANOSECONDS);
            return Optional.empty();
        } catch (TimeoutException e) {
            return Optional.of("nothing was stored for " + patience.toSeconds() + " s");
        } catch (ExecutionException e) {
            return Optional.of("nothing is stored: " + e.getCause().getMessage());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.of("interrupted");
        }
    }
}
