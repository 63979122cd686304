package yardlight.gateway.lane;

import java.util.concurrent.CompletableFuture;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;

/**
 * The lane for the gateway's own threads, which hand in many things and then wait. What comes back is completed when it
 * is on disk, exceptionally with {@link LaneBusy} when the lane is full or the database does not answer.
 */
public interface Intake {

    CompletableFuture<Answer> put(Stimulus stimulus);

    CompletableFuture<Answer> put(Tried tried);
}
