package yardlight.gateway.lane;

import java.util.concurrent.CompletableFuture;

/**
 * For whoever wants to know whether things are stored at present, and not only whether somebody says so: a transaction like
 * any other, with nothing in it.
 */
public interface LaneProbe {

    /** Completed when it is on disk, exceptionally with {@link LaneBusy} when it is not going to be. */
    CompletableFuture<Void> probe();
}
