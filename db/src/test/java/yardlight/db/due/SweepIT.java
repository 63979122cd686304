package yardlight.db.due;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.db.columns.Column;

/**
 * A look at what is due costs what is due, and not how many boxes have a deadline some time: the same sweep with a thousand
 * boxes and with a hundred thousand, in the same run.
 */
class SweepIT {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");
    private static final int FEW = 1_000;
    private static final int MANY = 100_000;
    private static final int LATE = 50;
    private static final int LOOKS = 400;

    /** A hundred times the boxes may cost an index a level or two, and a busy machine is not a stopwatch. */
    private static final double AT_MOST = 4;

    /** Microseconds. Once PostgreSQL knows what is in a large table it plans anew for each look, whatever is due. */
    private static final double PLANNING = 1_000;

    @ParameterizedTest
    @EnumSource
    void costs_what_is_due(TestDatabase database) {
        var jdbc = new JdbcTemplate(database.newDataSource());
        Dues dues = database == TestDatabase.H2 ? new H2Dues(jdbc) : new PostgresDues(jdbc, "one");
        boxes(database, jdbc, 0, FEW);
        measure(dues);
        double[] few = measure(dues);
        boxes(database, jdbc, FEW, MANY);
        double[] many = measure(dues);

        System.out.printf(
                "%s, a look at what is due: nothing due %.0f µs with %,d boxes and %.0f µs with %,d (%.2f); %d due %.0f and"
                        + " %.0f µs (%.2f)%n",
                database, few[0], FEW, many[0], MANY, many[0] / few[0], LATE, few[1], many[1], many[1] / few[1]);
        assertThat(many[0]).as("nothing due, µs").isLessThan(Math.max(AT_MOST * few[0], PLANNING));
        assertThat(many[1]).as("fifty due, µs").isLessThan(AT_MOST * few[1]);
    }

    /** Boxes that were heard within the last minute: their deadlines are to come. */
    private static void boxes(TestDatabase database, JdbcTemplate jdbc, int from, int to) {
        List<Object[]> rows = IntStream.range(from, to)
                .mapToObj(i -> {
                    Object at = Column.stored(NOW.plusMillis(120_000 + i % 60_000));
                    return new Object[] {"box", "box-" + i, at, at};
                })
                .toList();
        jdbc.batchUpdate("insert into due (kind, subject, due_at, ready_at) values (?, ?, ?, ?)", rows);
        if (database == TestDatabase.POSTGRESQL) {
            // A busy machine's autovacuum comes late, and until then the planner takes the table for a small one.
            jdbc.execute("vacuum analyze due");
        }
    }

    /** Medians in microseconds: of a look when nothing is due, and of one that claims fifty and gives them back. */
    private static double[] measure(Dues dues) {
        Instant later = NOW.plusMillis(120_000);
        double idle = median(() -> assertThat(dues.claim(NOW, 500)).isEmpty());
        double busy = median(() -> {
            List<Due> claimed = dues.claim(later.plusMillis(60_000), LATE);
            assertThat(claimed).hasSize(LATE);
            dues.giveBack(claimed.stream().map(Due::key).toList());
        });
        return new double[] {idle, busy};
    }

    private static double median(Runnable look) {
        double[] micros = new double[LOOKS];
        for (int i = 0; i < LOOKS; i++) {
            long begin = System.nanoTime();
            look.run();
            micros[i] = (System.nanoTime() - begin) / 1_000.0;
        }
        Arrays.sort(micros);
        return micros[LOOKS / 2];
    }
}
