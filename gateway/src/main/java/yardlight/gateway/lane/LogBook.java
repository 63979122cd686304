package yardlight.gateway.lane;

import java.util.concurrent.CompletableFuture;
import yardlight.escalation.Answer;
import yardlight.escalation.Entry;

/** Takes lines for the log about the gateway itself, which change nothing else. */
public interface LogBook {

    /** Completed when it is on disk, exceptionally with {@link LaneBusy} when it is not going to be. */
    CompletableFuture<Answer> put(Entry line);
}
