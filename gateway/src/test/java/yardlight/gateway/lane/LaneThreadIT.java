package yardlight.gateway.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.CompletionException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import yardlight.db.TestDatabase;
import yardlight.db.journal.Journal;
import yardlight.db.journal.Wants;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;

class LaneThreadIT {

    @Test
    void goes_on_after_an_error_in_a_work_and_after_one_behind_it() {
        var lane = new JournalLane(Duration.ZERO);
        var batch = new Batch(
                new Journal(TestDatabase.H2.newDataSource()),
                new CurrentSetup(document -> Setup.EMPTY),
                Links.NONE,
                InstantSource.system());
        var first = new AtomicInteger();
        var thread =
                new LaneThread(lane, batch, new LaneMeters(new SimpleMeterRegistry(), lane.queue()), List.of(stored -> {
                    if (first.getAndIncrement() == 0) {
                        throw new StackOverflowError();
                    }
                }));
        thread.start();
        try {
            assertThatThrownBy(put(lane, new Overflowing()).waiting()::join).isInstanceOf(CompletionException.class);
            put(lane, new Easy()).waiting().join();
            put(lane, new Easy()).waiting().join();

            assertThat(thread.pulse().trouble(Duration.ofMinutes(1))).isEmpty();
        } finally {
            thread.stop();
        }
    }

    private static Handed<Void> put(JournalLane lane, Work<Void> work) {
        var handed = new Handed<>(work);
        lane.queue().add(handed);
        return handed;
    }

    private record Overflowing() implements Work<Void> {

        @Override
        public void wants(Wants wants, Collection<String> names) {
            throw new StackOverflowError();
        }

        @Override
        public Void take(Turn turn) {
            return null;
        }

        @Override
        public String about() {
            return "too deep";
        }
    }

    private record Easy() implements Work<Void> {

        @Override
        public void wants(Wants wants, Collection<String> names) {}

        @Override
        public Void take(Turn turn) {
            return null;
        }

        @Override
        public String about() {
            return "nothing";
        }
    }
}
