package yardlight.db.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.db.log.AnswerLines;
import yardlight.db.log.LogLine;
import yardlight.escalation.rehearsal.Past;

/**
 * What reports read of a long log: 400 days of 20 sites. How long it takes is printed; {@code -Dyardlight.report.lines}
 * makes the log longer.
 */
class ReportQueriesAtScaleIT {

    private static final long LINES = Long.getLong("yardlight.report.lines", 100_000);
    private static final int SITES = 20;
    private static final Instant FIRST = Instant.parse("2025-10-01T00:00:00Z");
    private static final Duration ALL = Duration.ofDays(400);

    /** Each of 40 lines tells of one alarm: it was answered two minutes after it came, and is over after five. */
    private static final int LINES_OF_AN_ALARM = 40;

    /** On a machine that does much else; an index too few costs a hundred times as much. */
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    @ParameterizedTest
    @EnumSource
    void are_answered_by_indexes(TestDatabase database) {
        var jdbc = new JdbcTemplate(database.newDataSource());
        fill(jdbc, database);
        long alarms = LINES / LINES_OF_AN_ALARM;
        List<String> newest = LongStream.rangeClosed(Math.max(1, alarms - 999), alarms)
                .mapToObj(number -> "s-" + number % SITES + ".p.high." + number)
                .toList();

        Map<String, List<LogLine>> answers = timed(
                database + ": answers to 1,000 alarms", () -> new AnswerLines(jdbc).toAlarms(newest, FIRST.plus(ALL)));
        var past = new PastAlarms(jdbc);
        Instant month = FIRST.plus(Duration.ofDays(370));
        int found = timed(
                database + ": a month of alarms",
                () -> past.between(Optional.empty(), month, month.plus(Duration.ofDays(30)), 100_000)
                        .size());
        timed(
                database + ": what went on before it",
                () -> past.goingOn(Optional.empty(), month.minus(Duration.ofDays(31)), month, 100_000));
        int texts = timed(database + ": 400 days of texts", () -> {
            var all = new ArrayList<SentTexts.SentText>();
            new SentTexts(jdbc).each(FIRST, FIRST.plus(ALL).plusSeconds(1), all::add);
            return all.size();
        });

        Optional<Past> season = timed(
                database + ": a season to be played again",
                () -> new PastSeasons(jdbc)
                        .between(
                                Optional.empty(),
                                month.minus(Duration.ofDays(60)),
                                month.plus(Duration.ofDays(30)),
                                5000));

        assertThat(season.orElseThrow().deeds()).hasSizeBetween((int) (alarms * 88 / 400), (int) (alarms * 93 / 400));
        assertThat(answers.values()).hasSameSizeAs(newest).allMatch(lines -> lines.size() == 1);
        assertThat(found).isBetween((int) (alarms * 28 / 400), (int) (alarms * 31 / 400));
        assertThat(texts).isEqualTo((int) alarms);
    }

    private static <T> T timed(String what, Supplier<T> query) {
        long start = System.nanoTime();
        T answer = query.get();
        Duration took = Duration.ofNanos(System.nanoTime() - start);
        System.out.println(what + " of " + LINES + " lines: " + took.toMillis() + " ms");
        assertThat(took).as(what).isLessThan(PATIENCE);
        return answer;
    }

    private static void fill(JdbcTemplate jdbc, TestDatabase database) {
        long alarms = LINES / LINES_OF_AN_ALARM;
        double apart = ALL.toSeconds() / (double) alarms;
        String each = " from " + database.numbers(alarms);
        String site = "'s-' || mod(n, " + SITES + ")";
        String id = site + " || '.p.high.' || n";
        jdbc.update("insert into alarm (id, site, point, condition, occurrence, state, priority, active, seen, latched,"
                + " repeats, occurred_at, received_at, acknowledged_at, acknowledged_by, returned_at, activations, callout)"
                + " select " + id + ", " + site + ", 'p', 'high', n, 'normal', 'low', false, true, false, 0, "
                + at(apart, 0) + ", " + at(apart, 0) + ", " + at(apart, 120) + ", 'ana', " + at(apart, 300)
                + ", '', 'c'" + each);
        jdbc.update("insert into notice (id, contact, callouts, priority, words, state, queued_at, line, channel,"
                + " handed_over_at, purpose) select 'n-' || n, 'p-' || mod(n, 7), 'c', 'low', '', 'handed-over', "
                + at(apart, 0) + ", 0, 'sms-mail', " + at(apart, 1) + ", 'call'" + each);
        String line = "insert into log_line (line, logged_at, what, site, about, words) select ";
        jdbc.update(line + "n, " + at(apart / LINES_OF_AN_ALARM, 0) + ", 'event', " + site
                + ", 'alarm none;', 'p/high active: repeated' from " + database.numbers(LINES));
        jdbc.update(line + LINES + " + n, " + at(apart, 120) + ", 'answer', " + site + ", 'alarm ' || " + id
                + " || ';site s', 'p/high acknowledged by ana by link, is now normal'" + each);
    }

    /** When the n-th of something happened. */
    private static String at(double apart, int later) {
        return "(timestamp with time zone '2025-10-01 00:00:00+00' + n * interval '" + apart + "' second + interval '"
                + later + "' second)";
    }
}
