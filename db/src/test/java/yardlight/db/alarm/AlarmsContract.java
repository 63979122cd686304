package yardlight.db.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.CountingDataSource;
import yardlight.db.TestDatabase;
import yardlight.db.journal.AttemptRecord;
import yardlight.db.journal.Journal;
import yardlight.db.journal.Sheet;
import yardlight.db.journal.Writing;
import yardlight.escalation.Decision;
import yardlight.escalation.Escalator;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.wording.Links;

/** What is read of alarms, on every database. */
abstract class AlarmsContract {

    private static final Instant NOW = Fixtures.at("2026-11-25T12:00");
    private static final AlarmKey SEPARATOR = new AlarmKey("mesa-9", "separator", "low");

    private DataSource source;
    private Alarms alarms;

    abstract TestDatabase database();

    @BeforeEach
    void open() {
        source = database().newDataSource();
        alarms = new Alarms(new JdbcTemplate(source));
    }

    @Test
    void shows_an_alarm_with_its_callout_its_notices_and_every_attempt() {
        decide(NOW, active(Fixtures.TANK, NOW));
        String notice = alarms.byId("mesa-9.water-tank.high-high.1")
                .orElseThrow()
                .callout()
                .orElseThrow()
                .notices()
                .get(0)
                .notice()
                .id();
        attempt(new AttemptRecord(
                notice, NOW.plusSeconds(1), "sms-mail", 0, "deferred", "451 later", Optional.empty()));
        attempt(new AttemptRecord(
                notice, NOW.plusSeconds(6), "sms-mail", 0, "accepted", "250 taken", Optional.empty()));
        decide(NOW.plusSeconds(6), new Stimulus.NoticeFate(notice, 0, Stimulus.Fate.HANDED_OVER, "250 taken"));

        RecordedAlarm alarm = alarms.byId("mesa-9.water-tank.high-high.1").orElseThrow();

        RecordedNotice told = alarm.callout().orElseThrow().notices().get(0);
        assertThat(alarm.alarm().state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(told.notice().state()).isEqualTo(NoticeState.HANDED_OVER);
        assertThat(told.channel()).contains("sms-mail");
        assertThat(told.handedOverAt()).contains(NOW.plusSeconds(6));
        assertThat(told.attempts())
                .containsExactly(
                        new RecordedAttempt(NOW.plusSeconds(1), "sms-mail", "deferred", "451 later"),
                        new RecordedAttempt(NOW.plusSeconds(6), "sms-mail", "accepted", "250 taken"));
    }

    @Test
    void gives_back_numbers_as_the_box_wrote_them() {
        decide(NOW, active(Fixtures.TANK, NOW));

        Measured measured = alarms.current().get(0).alarm().measured();

        assertThat(measured).isEqualTo(Fixtures.measured("18.40", "18.0", "ft"));
    }

    @Test
    void finds_by_site_state_and_time_the_newest_first() {
        decide(NOW, active(Fixtures.TANK, NOW));
        decide(NOW.plusSeconds(10), active(SEPARATOR, NOW.plusSeconds(10)));
        decide(NOW.plusSeconds(20), new Stimulus.Acknowledge(SEPARATOR, "ana", "page", Optional.empty()));

        assertThat(ids(filter(Optional.of("mesa-9"), Optional.empty(), Optional.empty(), Optional.empty())))
                .containsExactly("mesa-9.separator.low.1", "mesa-9.water-tank.high-high.1");
        assertThat(ids(filter(Optional.of("elsewhere"), Optional.empty(), Optional.empty(), Optional.empty())))
                .isEmpty();
        assertThat(ids(filter(
                        Optional.empty(), Optional.of(AlarmState.ACKNOWLEDGED), Optional.empty(), Optional.empty())))
                .containsExactly("mesa-9.separator.low.1");
        assertThat(ids(filter(Optional.empty(), Optional.empty(), Optional.of(NOW.plusSeconds(10)), Optional.empty())))
                .containsExactly("mesa-9.separator.low.1");
        assertThat(ids(filter(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(NOW.plusSeconds(10)))))
                .containsExactly("mesa-9.water-tank.high-high.1");
    }

    @Test
    void keeps_an_older_occurrence_apart_from_the_newest() {
        decide(NOW, active(Fixtures.TANK, NOW));
        decide(NOW.plusSeconds(300), normal(Fixtures.TANK, NOW.plusSeconds(300)));
        decide(NOW.plusSeconds(400), new Stimulus.Acknowledge(Fixtures.TANK, "ana", "page", Optional.empty()));
        decide(NOW.plusSeconds(900), active(Fixtures.TANK, NOW.plusSeconds(900)));

        assertThat(alarms.current())
                .extracting(one -> one.alarm().id())
                .containsExactly("mesa-9.water-tank.high-high.2");
        RecordedAlarm first = alarms.byId("mesa-9.water-tank.high-high.1").orElseThrow();
        assertThat(first.alarm().state()).isEqualTo(AlarmState.NORMAL);
        assertThat(first.alarm().returnedAt()).contains(NOW.plusSeconds(300));
        assertThat(first.alarm().acknowledgedBy()).contains("ana");
    }

    @Test
    void needs_as_many_queries_for_thirty_alarms_as_for_one() {
        decide(NOW, active(Fixtures.TANK, NOW));
        long one = queries();
        for (int i = 0; i < 29; i++) {
            var key = new AlarmKey("mesa-9", "point-" + i, "low");
            decide(NOW.plus(Duration.ofMinutes(11L * i)), active(key, NOW.plus(Duration.ofMinutes(11L * i))));
        }

        assertThat(queries()).isEqualTo(one).isEqualTo(4);
        assertThat(alarms.find(filter(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty())))
                .hasSize(30);
    }

    private long queries() {
        var counting = new CountingDataSource(source);
        new Alarms(new JdbcTemplate(counting.proxy()))
                .find(filter(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
        return counting.queries();
    }

    private List<String> ids(AlarmFilter filter) {
        return alarms.find(filter).stream().map(one -> one.alarm().id()).toList();
    }

    private static AlarmFilter filter(
            Optional<String> site, Optional<AlarmState> state, Optional<Instant> from, Optional<Instant> to) {
        return new AlarmFilter(site, state, from, to, 100);
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

    private void attempt(AttemptRecord attempt) {
        try (var journal = new Journal(source);
                Writing writing = journal.begin()) {
            writing.attempt(attempt);
            writing.commit(writing.sheet(Fixtures.theSetup()), attempt.at());
        }
    }

    private static Stimulus active(AlarmKey key, Instant at) {
        return reported(key, true, at);
    }

    private static Stimulus normal(AlarmKey key, Instant at) {
        return reported(key, false, at);
    }

    private static Stimulus reported(AlarmKey key, boolean active, Instant at) {
        return new Stimulus.Reported(
                "mesa-9-box",
                List.of(new Report(
                        key,
                        Optional.of("mesa-9-box"),
                        active,
                        Optional.of(Priority.HIGH),
                        Fixtures.measured("18.40", "18.0", "ft"),
                        at,
                        false)));
    }
}
