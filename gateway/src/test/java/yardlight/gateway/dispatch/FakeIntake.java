package yardlight.gateway.dispatch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;
import yardlight.gateway.lane.Intake;
import yardlight.gateway.lane.Tried;

/** Remembers what it was handed and answers at once. */
final class FakeIntake implements Intake {

    final List<Stimulus> stimuli = new ArrayList<>();
    final List<Tried> tried = new ArrayList<>();
    Optional<RuntimeException> trouble = Optional.empty();

    @Override
    public synchronized CompletableFuture<Answer> put(Stimulus stimulus) {
        stimuli.add(stimulus);
        return answer();
    }

    @Override
    public synchronized CompletableFuture<Answer> put(Tried attempt) {
        tried.add(attempt);
        return answer();
    }

    private CompletableFuture<Answer> answer() {
        return trouble.<CompletableFuture<Answer>>map(CompletableFuture::failedFuture)
                .orElseGet(() -> CompletableFuture.completedFuture(new Answer.Done()));
    }
}
