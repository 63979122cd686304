package yardlight.gateway.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.db.journal.Journal;
import yardlight.db.journal.Wants;
import yardlight.escalation.Answer;
import yardlight.escalation.Entry;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;
import yardlight.gateway.OutOfMemory;
import yardlight.gateway.clock.Leap;

class LaneThreadIT {

    private final DataSource database = TestDatabase.H2.newDataSource();
    private final JournalLane lane = new JournalLane(Duration.ZERO, Instant.EPOCH);
    private final AtomicInteger stored = new AtomicInteger();

    @Test
    void goes_on_after_an_error_in_a_work_and_after_one_behind_it() {
        run(
                stored -> {
                    if (this.stored.getAndIncrement() == 0) {
                        throw new StackOverflowError();
                    }
                },
                () -> {
                    assertThatThrownBy(put(new Broken(() -> {
                                        throw new StackOverflowError();
                                    }))
                                    .waiting()::join)
                            .isInstanceOf(CompletionException.class);
                    put(new Easy()).waiting().join();
                    put(new Easy()).waiting().join();
                });
    }

    @Test
    void when_it_is_out_of_memory_the_one_fails_and_what_was_in_the_same_batch_is_stored() {
        Handed<Answer> before = put(new LineWork(line("before")));
        Handed<Void> broken = put(new Broken(OutOfMemory::now));
        Handed<Answer> behind = put(new LineWork(line("behind")));

        run(stored -> {}, () -> {
            before.waiting().join();
            behind.waiting().join();
            assertThatThrownBy(broken.waiting()::join).hasRootCauseInstanceOf(OutOfMemoryError.class);
            put(new Easy()).waiting().join();
        });

        assertThat(new JdbcTemplate(database).queryForList("select words from log_line order by line", String.class))
                .containsExactly("before", "behind");
    }

    /** It is stored by then; that the others hear of it too late is their loss, not the box's. */
    @Test
    void when_it_is_out_of_memory_behind_a_batch_the_batch_is_answered_all_the_same() {
        Handed<Answer> line = put(new LineWork(line("stored")));

        run(
                stored -> {
                    if (this.stored.getAndIncrement() == 0) {
                        OutOfMemory.now();
                    }
                },
                () -> {
                    line.waiting().join();
                    put(new LineWork(line("next"))).waiting().join();
                });

        assertThat(new JdbcTemplate(database).queryForList("select words from log_line order by line", String.class))
                .containsExactly("stored", "next");
    }

    /** Also what fails in failing: nobody may wait for ever for what is not in anybody's hand any more. */
    @Test
    void tells_everybody_when_there_is_no_memory_even_to_say_what_failed() {
        Handed<Void> worse = put(new Broken(OutOfMemory::now, OutOfMemory::now));
        Handed<Answer> behind = put(new LineWork(line("behind")));

        run(stored -> {}, () -> {
            assertThatThrownBy(worse.waiting()::join).isInstanceOf(CompletionException.class);
            assertThatThrownBy(() -> behind.waiting().get(10, TimeUnit.SECONDS))
                    .isInstanceOf(ExecutionException.class)
                    .hasCauseInstanceOf(LaneBusy.class);
            put(new LineWork(line("next"))).waiting().join();
        });
    }

    private void run(Aftermath aftermath, Runnable checks) {
        var hearing = new Hearing(InstantSource.system(), Leap.NEVER);
        var batch = new Batch(
                new Journal(database),
                new CurrentSetup(document -> Setup.EMPTY),
                Links.NONE,
                InstantSource.system(),
                hearing);
        var thread = new LaneThread(
                lane, batch, hearing, new LaneMeters(new SimpleMeterRegistry(), lane.queue()), List.of(aftermath));
        thread.start();
        try {
            checks.run();

            assertThat(thread.pulse().trouble(Duration.ofMinutes(1))).isEmpty();
        } finally {
            thread.stop();
        }
    }

    private static Entry line(String words) {
        return new Entry(Entry.What.SETUP, Map.of(), words);
    }

    private <T> Handed<T> put(Work<T> work) {
        var handed = new Handed<>(work);
        lane.queue().add(handed);
        return handed;
    }

    /**
     * @param said what comes of it when somebody asks what it is about
     */
    private record Broken(Runnable wanted, Supplier<String> said) implements Work<Void> {

        private Broken(Runnable wanted) {
            this(wanted, () -> "too much");
        }

        @Override
        public void wants(Wants wants, Collection<String> names) {
            wanted.run();
        }

        @Override
        public Void take(Turn turn) {
            return null;
        }

        @Override
        public String about() {
            return said.get();
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
