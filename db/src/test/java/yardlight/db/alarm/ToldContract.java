package yardlight.db.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.db.journal.Journal;
import yardlight.db.journal.Sheet;
import yardlight.db.journal.Writing;
import yardlight.escalation.Decision;
import yardlight.escalation.Escalator;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.wording.Links;

/** From a notice, an old occurrence or a box to how things stand now, on every database. */
abstract class ToldContract {

    private static final Instant NOW = Fixtures.at("2026-11-25T12:00");
    private static final AlarmKey HEATER = new AlarmKey("mesa-9", "heater", "off");

    private DataSource source;
    private Told told;

    abstract TestDatabase database();

    @BeforeEach
    void open() {
        source = database().newDataSource();
        told = new Told(new JdbcTemplate(source));
    }

    @Test
    void finds_the_newest_occurrence() {
        decide(NOW, report(HEATER, true, NOW));
        decide(NOW, new Stimulus.Acknowledge(HEATER, "ben", "page", Optional.empty()));
        decide(NOW, report(HEATER, false, NOW));
        assertThat(told.newest(HEATER)).contains("mesa-9.heater.off.1");

        decide(NOW.plusSeconds(60), report(HEATER, true, NOW.plusSeconds(60)));

        assertThat(told.newest(HEATER)).contains("mesa-9.heater.off.2");
        assertThat(told.newest(Fixtures.TANK)).isEmpty();
    }

    @Test
    void finds_the_alarms_that_a_notice_is_about() {
        decide(NOW, report(HEATER, true, NOW));
        String notice = told.made(NOW).get(0).notice();

        assertThat(told.notice(notice).orElseThrow().contact()).isEqualTo("ana");
        assertThat(told.about(notice)).extracting(Alarm::id).containsExactly("mesa-9.heater.off.1");
        assertThat(told.notice("none")).isEmpty();
        assertThat(told.about("none")).isEmpty();
    }

    @Test
    void finds_the_notices_made_since_an_instant_that_instant_included() {
        decide(NOW, report(HEATER, true, NOW));

        assertThat(told.made(NOW)).extracting(Told.Made::at).containsExactly(NOW);
        assertThat(told.made(NOW.plusMillis(1))).isEmpty();
    }

    @Test
    void finds_the_newest_notices_to_one_contact_and_no_more_than_asked_for() {
        decide(NOW, report(HEATER, true, NOW));
        decide(NOW.plusSeconds(60), report(Fixtures.TANK, true, NOW.plusSeconds(60)));

        List<Told.Sent> both = told.to("ana", NOW, 9);
        assertThat(both).extracting(one -> one.notice().contact()).containsOnly("ana");
        assertThat(both).extracting(one -> one.notice().queuedAt()).containsExactly(NOW.plusSeconds(60), NOW);
        assertThat(both.get(1).channel()).contains("sms-mail");
        assertThat(told.to("ana", NOW, 1)).containsExactly(both.get(0));
        assertThat(told.to("ana", NOW.plusMillis(1), 9)).containsExactly(both.get(0));
        assertThat(told.to("ben", NOW, 9)).isEmpty();
    }

    @Test
    void finds_points_that_had_alarms_set_up_or_not() {
        var points = new SeenPoints(new JdbcTemplate(source));
        decide(NOW, report(HEATER, true, NOW));
        decide(NOW, report(Fixtures.TANK, true, NOW));

        assertThat(points.since(NOW))
                .containsExactly(new SeenPoint("mesa-9", "heater"), new SeenPoint("mesa-9", "water-tank"));
        assertThat(points.since(NOW.plusMillis(1))).isEmpty();
    }

    @Test
    void finds_when_a_box_was_heard() {
        var beat = new Heartbeat(
                Optional.empty(), Map.of("wells", false), Optional.of(12.6), Optional.empty(), Optional.empty());
        decide(NOW, new Stimulus.Beat("mesa-9-box", beat));

        var heard = new HeardBoxes(new JdbcTemplate(source)).all();

        assertThat(heard).containsOnlyKeys("mesa-9-box");
        assertThat(heard.get("mesa-9-box").heardAt()).isEqualTo(NOW);
        assertThat(heard.get("mesa-9-box").last()).isEqualTo(beat);
    }

    private void decide(Instant now, Stimulus stimulus) {
        try (var journal = new Journal(source);
                Writing writing = journal.begin()) {
            Sheet sheet = writing.sheet(Fixtures.theSetup());
            Decision decision = new Escalator(Links.NONE, sheet::nextCode).decide(sheet, stimulus, now);
            sheet.apply(decision.changes());
            writing.commit(sheet, now);
        }
    }

    private static Stimulus report(AlarmKey key, boolean active, Instant at) {
        var report = new Report(key, Optional.of("mesa-9-box"), active, Optional.empty(), Measured.NOTHING, at, false);
        return new Stimulus.Reported("mesa-9-box", List.of(report));
    }
}
