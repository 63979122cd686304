package yardlight.db.due;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.db.columns.Column;
import yardlight.db.due.DueKey.Kind;

/** What claiming has to do on every database. */
abstract class DuesContract {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");

    JdbcTemplate jdbc;
    private Dues dues;

    abstract TestDatabase database();

    abstract Dues dues(JdbcTemplate jdbc);

    @BeforeEach
    void open() {
        jdbc = new JdbcTemplate(database().newDataSource());
        dues = dues(jdbc);
    }

    @Test
    void claim_what_is_due_by_now_the_longest_overdue_first() {
        due("late", NOW.minusSeconds(60));
        due("just", NOW);
        due("later", NOW.plusMillis(1));
        due("latest", NOW.minusSeconds(90));

        assertThat(dues.claim(NOW, 10))
                .extracting(due -> due.key().subject())
                .containsExactly("latest", "late", "just");
    }

    @Test
    void tell_since_when_it_was_due() {
        due("late", NOW.minusSeconds(60));

        assertThat(dues.claim(NOW, 10))
                .containsExactly(new Due(new DueKey(Kind.CALLOUT, "late"), NOW.minusSeconds(60)));
    }

    @Test
    void do_not_give_out_twice_what_is_claimed() {
        due("a", NOW.minusSeconds(3));
        due("b", NOW.minusSeconds(2));
        due("c", NOW.minusSeconds(1));

        List<Due> first = dues.claim(NOW, 2);
        List<Due> second = dues.claim(NOW, 2);

        assertThat(first).extracting(due -> due.key().subject()).containsExactly("a", "b");
        assertThat(second).extracting(due -> due.key().subject()).containsExactly("c");
        assertThat(dues.claim(NOW, 2)).isEmpty();
    }

    @Test
    void give_out_again_what_was_given_back() {
        due("a", NOW.minusSeconds(3));
        List<Due> claimed = dues.claim(NOW, 1);

        dues.giveBack(claimed.stream().map(Due::key).toList());

        assertThat(dues.claim(NOW, 1)).isEqualTo(claimed);
    }

    @Test
    void give_out_again_what_is_done_and_due_at_another_time() {
        due("a", NOW.minusSeconds(3));
        List<DueKey> keys = dues.claim(NOW, 1).stream().map(Due::key).toList();
        jdbc.update("delete from due");
        due("a", NOW.plusSeconds(60));

        dues.done(keys);

        assertThat(dues.claim(NOW, 1)).isEmpty();
        assertThat(dues.claim(NOW.plusSeconds(60), 1)).hasSize(1);
    }

    @Test
    void know_when_there_is_something_to_claim_next() {
        assertThat(dues.next(NOW)).isEmpty();

        due("a", NOW);
        due("b", NOW.plusSeconds(5));
        due("c", NOW.plusSeconds(9));

        assertThat(dues.next(NOW)).contains(NOW.plusSeconds(5));
    }

    @Test
    void give_each_thing_to_one_of_several_claimers() throws Exception {
        IntStream.range(0, 400).forEach(i -> due("c-" + i, NOW.minusSeconds(i)));
        var pool = Executors.newFixedThreadPool(4);
        Callable<List<Due>> claiming = () -> {
            var mine = new ArrayList<Due>();
            List<Due> some;
            do {
                some = dues.claim(NOW, 20);
                mine.addAll(some);
            } while (!some.isEmpty());
            return mine;
        };

        var all = new ArrayList<Due>();
        for (var claimed : pool.invokeAll(List.of(claiming, claiming, claiming, claiming))) {
            all.addAll(claimed.get());
        }
        pool.shutdown();

        Set<Due> distinct = new HashSet<>(all);
        assertThat(all).hasSameSizeAs(distinct);
        assertThat(remaining(distinct)).isZero();
    }

    /** What nobody got. A claimer that looked past rows which another was just claiming may leave some for later. */
    private long remaining(Set<Due> claimed) {
        return 400L - claimed.size() - dues.claim(NOW, 400).size();
    }

    @Test
    void cost_the_same_however_much_is_due() {
        IntStream.range(0, 200).forEach(i -> due("few-" + i, NOW.minusSeconds(1)));
        Duration few = timed();
        jdbc.update(
                "insert into due (kind, subject, due_at, ready_at) select 'callout', 'many-' || x, ?, ?" + " from "
                        + series(50_000),
                Column.stored(NOW),
                Column.stored(NOW));
        analyze();
        Duration many = timed();

        // Generous, for a shared machine: reading through all that is due takes a hundred times as long.
        assertThat(many).isLessThan(few.multipliedBy(10).plusMillis(50));
    }

    @Test
    void cost_the_same_however_much_is_armed_for_later() {
        armed("few", 1_000);
        Duration few = looked();
        armed("many", 99_000);
        Duration many = looked();

        System.out.println(database() + ": a look costs " + few.toNanos() / 1_000 + " us with 1,000 armed, "
                + many.toNanos() / 1_000 + " us with 100,000");
        // Generous, for a shared machine: reading through all that is armed takes a hundred times as long.
        assertThat(many).isLessThan(few.multipliedBy(5).plusMillis(2));
    }

    private void armed(String name, int count) {
        jdbc.update(
                "insert into due (kind, subject, due_at, ready_at) select 'callout', '" + name + "-' || x, ?, ? from "
                        + series(count),
                Column.stored(NOW.plusSeconds(3600)),
                Column.stored(NOW.plusSeconds(3600)));
        analyze();
    }

    /** What one sweep asks of the database when nothing is due: the quickest of some. */
    private Duration looked() {
        Duration best = Duration.ofHours(1);
        for (int i = 0; i < 50; i++) {
            long start = System.nanoTime();
            assertThat(dues.claim(NOW, 500)).isEmpty();
            assertThat(dues.next(NOW)).isPresent();
            Duration took = Duration.ofNanos(System.nanoTime() - start);
            best = took.compareTo(best) < 0 ? took : best;
        }
        return best;
    }

    abstract String series(int count);

    abstract void analyze();

    private Duration timed() {
        Duration best = Duration.ofHours(1);
        for (int i = 0; i < 5; i++) {
            long start = System.nanoTime();
            List<DueKey> keys = dues.claim(NOW, 20).stream().map(Due::key).toList();
            Duration took = Duration.ofNanos(System.nanoTime() - start);
            assertThat(keys).hasSize(20);
            dues.giveBack(keys);
            best = took.compareTo(best) < 0 ? took : best;
        }
        return best;
    }

    private void due(String subject, Instant at) {
        jdbc.update(
                "insert into due (kind, subject, due_at, ready_at) values ('callout', ?, ?, ?)",
                subject,
                Column.stored(at),
                Column.stored(at));
    }
}
