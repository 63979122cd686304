package yardlight.db.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import yardlight.db.CountingDataSource;
import yardlight.db.TestDatabase;
import yardlight.db.journal.Journal;
import yardlight.db.journal.ReadingRecord;
import yardlight.db.journal.ReadingRows;
import yardlight.db.journal.ReadingRows.Fate;
import yardlight.db.journal.Writing;
import yardlight.escalation.Fixtures;

/** What is kept of readings, packed, summed up and let go, on every database. */
abstract class ReadingsContract {

    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");
    private static final Duration DAY = Duration.ofDays(1);

    private DataSource source;
    private JdbcTemplate jdbc;
    private Readings readings;
    private Upkeep upkeep;

    abstract TestDatabase database();

    @BeforeEach
    void open() {
        source = database().newDataSource();
        jdbc = new JdbcTemplate(source);
        readings = new Readings(jdbc);
        upkeep = new Upkeep(jdbc, new DataSourceTransactionManager(source));
    }

    @Test
    void gives_back_a_stretch_from_its_start_to_before_its_end() {
        posted(NOON, 1, 2, 3);

        assertThat(values(NOON, NOON.plusSeconds(120), 100)).containsExactly(1.0, 2.0);
        assertThat(values(NOON.plusMillis(1), NOON.plusSeconds(121), 100)).containsExactly(2.0, 3.0);
        assertThat(values(NOON, NOON, 100)).isEmpty();
        assertThat(readings.series("mesa-9", "separator", NOON, NOON.plus(DAY), 10))
                .isEqualTo(Curve.NONE);
        assertThatThrownBy(() -> values(NOON, NOON.plus(DAY), 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void keeps_the_first_of_a_point_and_time_within_a_post_and_between_posts() {
        assertThat(post(NOON, List.of(NOON, NOON, NOON.plusSeconds(1)), 5))
                .containsExactly(Fate.KEPT, Fate.REPEATED, Fate.KEPT);
        assertThat(post(NOON, List.of(NOON, NOON.plusSeconds(2)), 6)).containsExactly(Fate.REPEATED, Fate.KEPT);

        assertThat(values(NOON, NOON.plus(DAY), 100)).containsExactly(5.0, 5.0, 6.0);
    }

    @Test
    void knows_a_reading_again_when_its_day_is_packed_and_when_that_is_summed_up() {
        posted(NOON, 1, 2);
        upkeep.run(Keep.USUAL, NOON.plus(DAY));
        assertThat(count("reading")).isZero();

        assertThat(post(NOON.plus(DAY), List.of(NOON, NOON.plusSeconds(1)), 9))
                .containsExactly(Fate.REPEATED, Fate.KEPT);

        upkeep.run(Keep.USUAL, NOON.plus(Duration.ofDays(31)));
        assertThat(post(NOON.plus(Duration.ofDays(31)), List.of(NOON, NOON.plusSeconds(900)), 9))
                .containsExactly(Fate.TOO_OLD, Fate.KEPT);
    }

    @Test
    void packs_what_is_older_than_two_hours_by_its_day_and_reads_it_as_before() {
        Instant midnight = NOON.plus(Duration.ofHours(12));
        posted(midnight.minusSeconds(120), 1, 2, 3, 4);

        assertThat(upkeep.run(Keep.USUAL, midnight.plusSeconds(7080)).packed()).isZero();
        assertThat(upkeep.run(Keep.USUAL, midnight.plusSeconds(7260)).packed()).isEqualTo(3);
        assertThat(count("reading")).isEqualTo(1);
        assertThat(count("reading_day")).isEqualTo(2);
        assertThat(values(NOON, NOON.plus(DAY), 100)).containsExactly(1.0, 2.0, 3.0, 4.0);

        assertThat(upkeep.run(Keep.USUAL, midnight.plusSeconds(7261)).packed()).isEqualTo(1);
        assertThat(count("reading_day")).isEqualTo(2);
        assertThat(values(NOON, NOON.plus(DAY), 100)).containsExactly(1.0, 2.0, 3.0, 4.0);
    }

    @Test
    void knows_a_reading_of_today_again_when_it_is_packed() {
        posted(NOON, 1);
        Instant later = NOON.plus(Duration.ofHours(3));
        upkeep.run(Keep.USUAL, later);
        assertThat(count("reading")).isZero();

        assertThat(post(later, List.of(NOON), 2)).containsExactly(Fate.REPEATED);
    }

    @Test
    void puts_late_readings_into_a_packed_day_and_shows_them_before_that_too() {
        posted(NOON, 1, 3);
        upkeep.run(Keep.USUAL, NOON.plus(DAY));
        post(NOON.plus(DAY), List.of(NOON.plusSeconds(30)), 2);
        assertThat(values(NOON, NOON.plus(DAY), 100)).containsExactly(1.0, 2.0, 3.0);

        assertThat(upkeep.run(Keep.USUAL, NOON.plus(DAY)).packed()).isEqualTo(1);

        assertThat(count("reading")).isZero();
        assertThat(values(NOON, NOON.plus(DAY), 100)).containsExactly(1.0, 2.0, 3.0);
    }

    @Test
    void sums_up_after_30_days_and_lets_go_after_400() {
        posted(NOON, 1, 2, 6);
        upkeep.run(Keep.USUAL, NOON.plus(DAY));

        upkeep.run(Keep.USUAL, NOON.plus(Duration.ofDays(30)));
        assertThat(values(NOON, NOON.plus(DAY), 100)).hasSize(3);
        assertThat(upkeep.run(Keep.USUAL, NOON.plus(Duration.ofDays(31))).summed())
                .isEqualTo(1);
        assertThat(readings.series("mesa-9", "water-tank", NOON, NOON.plus(DAY), 100)
                        .samples())
                .containsExactly(new Sample(NOON, 1, 6, 3, 3));

        upkeep.run(Keep.USUAL, NOON.plus(Duration.ofDays(400)));
        assertThat(count("reading_day")).isEqualTo(1);
        assertThat(upkeep.run(Keep.USUAL, NOON.plus(Duration.ofDays(401))).forgotten())
                .isEqualTo(1);
        assertThat(count("reading_day")).isZero();
    }

    @Test
    void sums_up_at_once_what_comes_for_a_time_that_is_summed_up_already() {
        posted(NOON, 1);
        Instant later = NOON.plus(Duration.ofDays(40));
        upkeep.run(Keep.USUAL, later);

        post(later, List.of(NOON.plus(DAY), NOON.plus(DAY).plusSeconds(60)), 7);
        upkeep.run(Keep.USUAL, later);

        assertThat(readings.series("mesa-9", "water-tank", NOON.plus(DAY), later, 100)
                        .samples())
                .containsExactly(new Sample(NOON.plus(DAY), 7, 7, 7, 2));
    }

    @Test
    void gives_at_most_so_many_samples_with_all_that_was_measured_in_them() {
        for (int day = 0; day < 3; day++) {
            posted(NOON.plus(DAY.multipliedBy(day)), IntStream.range(0, 600).toArray());
        }
        upkeep.run(Keep.USUAL, NOON.plus(DAY.multipliedBy(2)));

        List<Sample> samples = readings.series("mesa-9", "water-tank", NOON, NOON.plus(DAY.multipliedBy(3)), 50)
                .samples();

        assertThat(samples).hasSizeLessThanOrEqualTo(50);
        assertThat(samples).isSortedAccordingTo(java.util.Comparator.comparing(Sample::at));
        assertThat(samples.stream().mapToInt(Sample::count).sum()).isEqualTo(1800);
        assertThat(samples.stream().mapToDouble(Sample::max).max()).hasValue(599);
        assertThat(samples.stream().mapToDouble(Sample::min).min()).hasValue(0);
        assertThat(samples.stream().mapToDouble(one -> one.mean() * one.count()).sum() / 1800)
                .isCloseTo(299.5, org.assertj.core.data.Offset.offset(1e-9));
    }

    @Test
    void tells_the_newest_of_each_point_also_when_it_is_packed() {
        posted(NOON, 1, 2);
        assertThat(readings.newest("mesa-9"))
                .containsExactly(new Newest("water-tank", Optional.of("ft"), NOON.plusSeconds(60), 2));

        upkeep.run(Keep.USUAL, NOON.plus(DAY));
        assertThat(readings.newest("mesa-9"))
                .containsExactly(new Newest("water-tank", Optional.of("ft"), NOON.plusSeconds(60), 2));
        assertThat(readings.newest("rio-4")).isEmpty();
    }

    @Test
    void asks_once_for_the_newest_of_a_whole_site() {
        var counting = new CountingDataSource(source);
        var counted = new Readings(new JdbcTemplate(counting.proxy()));
        for (String point : List.of("a", "b", "c")) {
            store(NOON, rows -> rows.keep(new ReadingRecord(rows.open("mesa-9", point, Optional.of("ft")), 7, NOON)));
        }
        upkeep.run(Keep.USUAL, NOON.plus(DAY));
        posted(NOON.plus(DAY), 3);
        assertThat(counted.newest("mesa-9")).extracting(Newest::value).containsExactly(7.0, 7.0, 7.0, 3.0);
        assertThat(counting.mine()).isEqualTo(1);
    }

    @Test
    void keeps_series_of_one_point_in_other_units_apart() {
        posted(NOON, 1);
        store(
                NOON,
                rows -> rows.keep(new ReadingRecord(rows.open("mesa-9", "water-tank", Optional.of("psi")), 40, NOON)));

        Curve curve = readings.series("mesa-9", "water-tank", NOON, NOON.plus(DAY), 10);

        assertThat(curve.unit()).contains("psi");
        assertThat(curve.samples()).extracting(Sample::mean).containsExactly(40.0);
    }

    @Test
    void gives_a_unit_to_a_series_that_had_none() {
        store(NOON, rows -> {
            Series series = rows.open("mesa-9", "water-tank", Optional.empty());
            rows.keep(new ReadingRecord(rows.adopt(series, "ft"), 1, NOON));
        });

        assertThat(readings.of("mesa-9", "water-tank").orElseThrow().unit()).contains("ft");
    }

    @Test
    void leaves_a_day_alone_to_which_something_came_while_it_was_packed() {
        posted(NOON, 1, 2);
        var during = new Upkeep(new JdbcTemplate(source), new DataSourceTransactionManager(source) {
            private static final long serialVersionUID = 1L;

            @Override
            protected void doBegin(Object transaction, org.springframework.transaction.TransactionDefinition how) {
                if (count("reading") == 2) {
                    post(NOON.plus(DAY), List.of(NOON.plusSeconds(30)), 9);
                }
                super.doBegin(transaction, how);
            }
        });

        assertThat(during.run(Keep.USUAL, NOON.plus(DAY)).packed()).isZero();
        assertThat(values(NOON, NOON.plus(DAY), 100)).containsExactly(1.0, 9.0, 2.0);

        assertThat(upkeep.run(Keep.USUAL, NOON.plus(DAY)).packed()).isEqualTo(3);
        assertThat(values(NOON, NOON.plus(DAY), 100)).containsExactly(1.0, 9.0, 2.0);
    }

    /** One a minute. */
    private void posted(Instant from, int... values) {
        store(from, rows -> {
            Series series = series(rows);
            for (int i = 0; i < values.length; i++) {
                rows.keep(new ReadingRecord(series, values[i], from.plusSeconds(60L * i)));
            }
        });
    }

    private List<Fate> post(Instant now, List<Instant> at, double value) {
        var all = new ArrayList<Fate>();
        store(now, rows -> {
            Series series = series(rows);
            List<ReadingRecord> records = at.stream()
                    .map(one -> new ReadingRecord(series, value, one))
                    .toList();
            List<Fate> fates = rows.fates(records, now);
            for (int i = 0; i < fates.size(); i++) {
                if (fates.get(i) == Fate.KEPT) {
                    rows.keep(records.get(i));
                }
            }
            all.addAll(fates);
        });
        return all;
    }

    private static Series series(ReadingRows rows) {
        return rows.series("mesa-9", "water-tank")
                .orElseGet(() -> rows.open("mesa-9", "water-tank", Optional.of("ft")));
    }

    private void store(Instant now, java.util.function.Consumer<ReadingRows> work) {
        try (var journal = new Journal(source);
                Writing writing = journal.begin()) {
            var sheet = writing.sheet(Fixtures.theSetup());
            work.accept(writing.readings());
            writing.commit(sheet, now);
        }
    }

    private List<Double> values(Instant from, Instant to, int most) {
        return readings.series("mesa-9", "water-tank", from, to, most).samples().stream()
                .map(Sample::mean)
                .toList();
    }

    private long count(String table) {
        return jdbc.queryForObject("select count(*) from " + table, Long.class);
    }
}
