package yardlight.gateway.due;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import yardlight.db.due.Due;
import yardlight.db.due.DueKey;
import yardlight.db.due.DueKey.Kind;
import yardlight.db.due.Dues;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;
import yardlight.gateway.OutOfMemory;
import yardlight.gateway.clock.Pace;
import yardlight.gateway.lane.Intake;
import yardlight.gateway.lane.Tried;

class DueLoopTest {

    private final AtomicInteger tries = new AtomicInteger();
    private final List<DueKey> givenBack = new CopyOnWriteArrayList<>();
    private final List<DueKey> done = new CopyOnWriteArrayList<>();

    @Test
    void gives_back_what_it_holds_and_goes_on_after_an_error() {
        goesOnAfter(new StackOverflowError());
    }

    @Test
    void gives_back_what_it_holds_and_goes_on_when_it_was_out_of_memory() {
        goesOnAfter(OutOfMemory.caught());
    }

    private void goesOnAfter(Error error) {
        InstantSource clock = InstantSource.system();
        var sweep = new Sweep(
                new OneDue(), new Stimuli(new FailsOnce(error), Optional::empty), clock, new SimpleMeterRegistry());
        var loop = new DueLoop(sweep, clock, Pace.REAL, new DueSettings(Duration.ofMillis(10)));
        loop.start();
        try {
            await().atMost(Duration.ofSeconds(5)).until(() -> !done.isEmpty());

            assertThat(givenBack).hasSize(1);
            assertThat(loop.pulse().trouble(Duration.ofMinutes(1))).isEmpty();
        } finally {
            loop.stop();
        }
    }

    private final class FailsOnce implements Intake {

        private final Error error;

        private FailsOnce(Error error) {
            this.error = error;
        }

        @Override
        public CompletableFuture<Answer> put(Stimulus stimulus) {
            if (tries.getAndIncrement() == 0) {
                throw error;
            }
            return CompletableFuture.completedFuture(new Answer.Done());
        }

        @Override
        public CompletableFuture<Answer> put(Tried tried) {
            throw new UnsupportedOperationException();
        }
    }

    private final class OneDue implements Dues {

        private static final DueKey KEY = new DueKey(Kind.CALLOUT, "c-1");

        @Override
        public List<Due> claim(Instant now, int limit) {
            return List.of(new Due(KEY, now));
        }

        @Override
        public void done(Collection<DueKey> keys) {
            done.addAll(keys);
        }

        @Override
        public void giveBack(Collection<DueKey> keys) {
            givenBack.addAll(keys);
        }

        @Override
        public Optional<Instant> next(Instant now) {
            return Optional.empty();
        }
    }
}
