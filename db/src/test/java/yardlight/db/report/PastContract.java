package yardlight.db.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.CountingDataSource;
import yardlight.db.TestDatabase;
import yardlight.db.journal.Journal;
import yardlight.db.journal.Sheet;
import yardlight.db.journal.Writing;
import yardlight.db.report.SentTexts.SentText;
import yardlight.escalation.Decision;
import yardlight.escalation.Entry;
import yardlight.escalation.Escalator;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.performance.PastAlarm;
import yardlight.escalation.rehearsal.Past;
import yardlight.escalation.rehearsal.PastDeed;
import yardlight.escalation.rehearsal.PastText;
import yardlight.escalation.wording.Links;

/** What reports read of the past, on every database. */
abstract class PastContract {

    private static final Instant NOW = Fixtures.at("2026-11-25T12:00");
    private static final AlarmKey SEPARATOR = new AlarmKey("mesa-9", "separator", "low");
    private static final int ALL = 1000;

    private DataSource source;
    private PastAlarms alarms;

    abstract TestDatabase database();

    @BeforeEach
    void open() {
        source = database().newDataSource();
        alarms = new PastAlarms(new JdbcTemplate(source));
    }

    @Test
    void an_occurrence_is_read_with_its_end_its_answer_and_whether_anybody_was_called() {
        decide(NOW, reported(Fixtures.TANK, true, NOW));
        decide(NOW.plusSeconds(60), new Stimulus.Acknowledge(Fixtures.TANK, "ben", "page", Optional.empty()));
        decide(NOW.plusSeconds(90), reported(Fixtures.TANK, false, NOW.plusSeconds(90)));

        assertThat(alarms.between(Optional.empty(), NOW, NOW.plusSeconds(1), ALL))
                .containsExactly(new PastAlarm(
                        Fixtures.TANK,
                        Priority.HIGH,
                        true,
                        NOW,
                        NOW,
                        Optional.of(NOW.plusSeconds(90)),
                        Optional.of(NOW.plusSeconds(60)),
                        List.of()));
    }

    @Test
    void what_came_back_within_the_occurrence_is_remembered_with_it() {
        decide(NOW, reported(Fixtures.TANK, true, NOW));
        decide(NOW.plusSeconds(10), reported(Fixtures.TANK, false, NOW.plusSeconds(10)));
        decide(NOW.plusSeconds(20), reported(Fixtures.TANK, true, NOW.plusSeconds(20)));

        assertThat(alarms.between(Optional.of("mesa-9"), NOW, NOW.plusSeconds(1), ALL))
                .extracting(PastAlarm::activations)
                .containsExactly(List.of(NOW.plusSeconds(20)));
        assertThat(alarms.between(Optional.of("draw-2"), NOW, NOW.plusSeconds(1), ALL))
                .isEmpty();
    }

    @Test
    void what_went_on_at_an_instant_began_before_it_and_was_not_over() {
        decide(NOW, reported(Fixtures.TANK, true, NOW));
        decide(NOW.plusSeconds(5), reported(SEPARATOR, true, NOW.plusSeconds(5)));
        decide(NOW.plusSeconds(90), reported(SEPARATOR, false, NOW.plusSeconds(90)));

        assertThat(goingOn(NOW.plusSeconds(60))).containsExactlyInAnyOrder(Fixtures.TANK, SEPARATOR);
        assertThat(goingOn(NOW.plusSeconds(90))).containsExactly(Fixtures.TANK);
        assertThat(goingOn(NOW)).isEmpty();
    }

    @Test
    void a_text_counts_once_a_carrier_took_it() {
        decide(NOW, reported(Fixtures.TANK, true, NOW));
        List<SentText> before = texts();
        String notice = new JdbcTemplate(source).queryForObject("select id from notice", String.class);

        decide(NOW.plusSeconds(7), new Stimulus.NoticeFate(notice, 0, Stimulus.Fate.HANDED_OVER, "250 taken"));

        assertThat(before).isEmpty();
        assertThat(texts()).containsExactly(new SentText("ana", "call", "sms-mail", NOW.plusSeconds(7)));
    }

    @Test
    void a_night_is_remembered_as_it_is_to_be_played_again() {
        var seasons = new PastSeasons(new JdbcTemplate(source));
        decide(NOW, reported(Fixtures.TANK, true, NOW));
        String notice = new JdbcTemplate(source).queryForObject("select id from notice", String.class);
        decide(NOW.plusSeconds(7), new Stimulus.NoticeFate(notice, 0, Stimulus.Fate.HANDED_OVER, "250 taken"));
        decide(NOW.plusSeconds(60), new Stimulus.AnswerNotice(notice, "link"));
        decide(NOW.plusSeconds(90), reported(Fixtures.TANK, false, NOW.plusSeconds(90)));
        String alarm = "mesa-9.water-tank.high-high.1";

        Past past =
                seasons.between(Optional.empty(), NOW, NOW.plusSeconds(1), ALL).orElseThrow();

        assertThat(past)
                .isEqualTo(new Past(
                        NOW,
                        NOW.plusSeconds(1),
                        List.of(
                                deed(0, alarm, PastDeed.What.BEGAN, ""),
                                deed(60, alarm, PastDeed.What.ANSWERED, "ana"),
                                deed(90, alarm, PastDeed.What.ENDED, "")),
                        List.of(PastText.of(NOW, "ana", "sms-mail", List.of("mesa-9"))),
                        Map.of(alarm, Priority.HIGH)));
        assertThat(seasons.between(Optional.of(Set.of("mesa-9")), NOW, NOW.plusSeconds(1), ALL))
                .contains(past);
        assertThat(seasons.between(Optional.of(Set.of("draw-2")), NOW, NOW.plusSeconds(1), ALL)
                        .orElseThrow()
                        .deeds())
                .isEmpty();
        assertThat(seasons.between(Optional.empty(), NOW, NOW.plusSeconds(1), 0))
                .isEmpty();
    }

    @Test
    void a_time_that_would_be_cut_short_by_lines_that_tell_nothing_is_not_read_at_all() {
        var seasons = new PastSeasons(new JdbcTemplate(source));
        for (int i = 0; i < 12; i++) {
            log(NOW.plusSeconds(2 * i), "suppressed-by-design");
            log(NOW.plusSeconds(2 * i + 1), "normal");
        }
        decide(NOW.plusSeconds(60), reported(Fixtures.TANK, true, NOW.plusSeconds(60)));

        assertThat(seasons.between(Optional.empty(), NOW, NOW.plusSeconds(90), 1))
                .isEmpty();
        assertThat(seasons.between(Optional.empty(), NOW, NOW.plusSeconds(90), 2)
                        .orElseThrow()
                        .deeds())
                .extracting(PastDeed::what)
                .hasSize(13)
                .endsWith(PastDeed.What.BEGAN);
    }

    @Test
    void a_text_about_a_callout_that_began_after_the_time_does_not_belong_to_it() {
        decide(NOW, reported(Fixtures.TANK, true, NOW));
        takeAll(NOW.plusSeconds(7));
        decide(NOW.plusSeconds(60), new Stimulus.Acknowledge(Fixtures.TANK, "ben", "page", Optional.empty()));
        decide(NOW.plusSeconds(90), reported(Fixtures.TANK, false, NOW.plusSeconds(90)));
        decide(NOW.plusSeconds(3600), reported(SEPARATOR, true, NOW.plusSeconds(3600)));
        takeAll(NOW.plusSeconds(3607));

        var seasons = new PastSeasons(new JdbcTemplate(source));

        assertThat(textsUntil(seasons, NOW.plusSeconds(3600))).containsExactly(NOW);
        assertThat(textsUntil(seasons, NOW.plusSeconds(3601))).containsExactly(NOW, NOW.plusSeconds(3600));
    }

    private static List<Instant> textsUntil(PastSeasons seasons, Instant to) {
        return seasons.between(Optional.empty(), NOW, to, ALL).orElseThrow().texts().stream()
                .map(PastText::at)
                .toList();
    }

    /** A carrier takes every call that waits. */
    private void takeAll(Instant now) {
        new JdbcTemplate(source)
                .queryForList(
                        "select id from notice where handed_over_at is null and coalesce(purpose, 'call') = 'call'",
                        String.class)
                .forEach(id -> decide(now, new Stimulus.NoticeFate(id, 0, Stimulus.Fate.HANDED_OVER, "250 taken")));
    }

    /** A line of the log about the pump. */
    private void log(Instant now, String state) {
        var line = new Entry(
                Entry.What.ALARM,
                Map.of("site", "mesa-9", "alarm", "mesa-9.injection-pump.off.1"),
                "injection-pump/off is now " + state);
        try (var journal = new Journal(source);
                Writing writing = journal.begin()) {
            Sheet sheet = writing.sheet(Fixtures.theSetup());
            writing.log(now, List.of(line));
            writing.commit(sheet, now);
        }
    }

    @Test
    void three_queries_are_enough_for_any_number_of_nights() {
        for (int night = 0; night < 5; night++) {
            decide(NOW.plus(Duration.ofDays(night)), reported(Fixtures.TANK, night % 2 == 0, NOW));
        }
        var counting = new CountingDataSource(source);

        var seasons = new PastSeasons(new JdbcTemplate(counting.proxy()));
        seasons.between(Optional.of(Set.of("mesa-9")), NOW, NOW.plus(Duration.ofDays(9)), ALL);

        assertThat(counting.queries()).isEqualTo(3);
    }

    private static PastDeed deed(int seconds, String alarm, PastDeed.What what, String by) {
        return new PastDeed(NOW.plusSeconds(seconds), Fixtures.TANK, alarm, what, by, Duration.ZERO, "");
    }

    private List<AlarmKey> goingOn(Instant at) {
        return alarms.goingOn(Optional.empty(), at.minus(Duration.ofDays(31)), at, ALL).stream()
                .map(PastAlarm::key)
                .toList();
    }

    private List<SentText> texts() {
        var found = new ArrayList<SentText>();
        new SentTexts(new JdbcTemplate(source)).each(NOW, NOW.plusSeconds(1), found::add);
        return found;
    }

    private void decide(Instant now, Stimulus stimulus) {
        try (var journal = new Journal(source);
                Writing writing = journal.begin()) {
            Sheet sheet = writing.sheet(Fixtures.theSetup());
            Decision decision = new Escalator(Links.NONE, sheet::nextCode).decide(sheet, stimulus, now);
            sheet.apply(decision.changes());
            writing.log(now, decision.entries());
            writing.commit(sheet, now);
        }
    }

    private static Stimulus reported(AlarmKey key, boolean active, Instant at) {
        return new Stimulus.Reported(
                "mesa-9-box",
                List.of(new Report(
                        key,
                        Optional.of("mesa-9-box"),
                        active,
                        Optional.of(Priority.HIGH),
                        Measured.NOTHING,
                        at,
                        false)));
    }
}
