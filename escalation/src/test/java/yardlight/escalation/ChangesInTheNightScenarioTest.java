package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.ana;
import static yardlight.escalation.Fixtures.ben;
import static yardlight.escalation.Fixtures.theSetup;

import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/** An alarm gets worse, the owner edits the setup, a box is taken away: in the middle of it. */
class ChangesInTheNightScenarioTest {

    private static final String QUIET_NIGHT = "2026-11-25T02:00";

    @Test
    void an_alarm_that_gets_worse_after_the_ladder_was_exhausted_calls_again() {
        Night night = new Night(with(List.of(ana()), rung("ana", 5)))
                .active("2026-11-25T02:00", TANK, Priority.HIGH)
                .active("2026-11-25T02:30", TANK, Priority.CRITICAL)
                .run("2026-11-25T02:31");

        assertThat(night.calls()).containsExactly("02:00:00 ana", "02:30:00 ana");
    }

    @Test
    void an_alarm_that_comes_back_worse_wakes_whom_it_was_held_from() {
        Night night = new Night(with(List.of(ana()), rung("ana", 5)))
                .active("2026-11-25T02:00", TANK, Priority.MEDIUM)
                .normal("2026-11-25T02:05", TANK)
                .active("2026-11-25T02:10", TANK, Priority.CRITICAL)
                .run("2026-11-25T02:11");

        assertThat(night.calls()).containsExactly("02:10:00 ana");
    }

    @Test
    void an_alarm_that_gets_worse_also_wakes_whom_the_ladder_has_passed() {
        Night night = new Night(with(List.of(ana(), ben()), rung("ana", 5), rung("ben", 5)))
                .active("2026-11-25T02:00", TANK, Priority.MEDIUM)
                .active("2026-11-25T02:02", TANK, Priority.CRITICAL)
                .run("2026-11-25T02:03");

        assertThat(night.calls()).contains("02:00:00 ben", "02:02:00 ana");
    }

    @Test
    void chatter_that_was_answered_does_not_swallow_something_critical() {
        Night night = new Night(with(List.of(ben()), rung("ben", 5)))
                .active("2026-11-25T02:00:00", TANK, Priority.MEDIUM)
                .normal("2026-11-25T02:00:05", TANK)
                .active("2026-11-25T02:00:20", TANK, Priority.MEDIUM)
                .normal("2026-11-25T02:00:22", TANK)
                .stimulus("2026-11-25T02:00:25", new Stimulus.Acknowledge(TANK, "ben", "page", Optional.empty()))
                .active("2026-11-25T02:00:40", TANK, Priority.CRITICAL)
                .run("2026-11-25T02:00:41");

        assertThat(night.picture().alarm(TANK).state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(night.calls()).contains("02:00:40 ben");
    }

    @Test
    void alarms_that_joined_a_flood_unheard_are_told_before_the_ladder_is_exhausted() {
        Night night = new Night(with(List.of(ben()), rung("ben", 60)));
        for (int i = 0; i < 12; i++) {
            night.active("2026-11-25T02:00:0" + i % 10, point(i), Priority.HIGH);
        }
        for (int i = 12; i < 22; i++) {
            night.active("2026-11-25T02:55:1" + i % 10, point(i), Priority.HIGH);
        }
        night.run("2026-11-25T05:00");

        assertThat(night.picture().callouts())
                .filteredOn(callout -> callout.kind() == Callout.Kind.EXHAUSTED)
                .allSatisfy(callout -> assertThat(callout.facts().announced())
                        .isEqualTo(callout.facts().alarms().size()));
    }

    @Test
    void quiet_hours_hold_what_joins_a_flood_too() {
        Night night = new Night(with(List.of(ana()), rung("ana", 120)));
        for (int i = 0; i < 12; i++) {
            night.active("2026-11-25T20:58:" + (10 + i), point(i), Priority.MEDIUM);
        }
        for (int i = 12; i < 30; i++) {
            night.active("2026-11-25T21:05:" + (10 + i), point(i), Priority.MEDIUM);
        }
        night.run("2026-11-25T23:00");

        assertThat(night.calls()).noneMatch(call -> call.startsWith("21:"));
    }

    @Test
    void a_link_answers_only_what_its_text_knew() {
        Night night = new Night(with(List.of(ben()), rung("ben", 5))).active(QUIET_NIGHT, TANK, Priority.HIGH);
        night.run("2026-11-25T02:00:01");
        String notice = night.picture().notices().get(0).id();
        night.stimulus("2026-11-25T02:01", new Stimulus.Acknowledge(TANK, "ben", "page", Optional.empty()))
                .normal("2026-11-25T02:02", TANK)
                .active("2026-11-25T04:00", TANK, Priority.CRITICAL)
                .stimulus("2026-11-25T04:00:10", new Stimulus.AnswerNotice(notice, "link"))
                .run("2026-11-25T04:01");

        assertThat(night.picture().alarm(TANK).state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }

    @Test
    void longer_quiet_hours_are_kept_by_a_callout_that_is_held() {
        Contact later = Fixtures.ana();
        Night night = new Night(with(List.of(ana()), rung("ana", 5)))
                .active(QUIET_NIGHT, TANK, Priority.MEDIUM)
                .setup("2026-11-25T03:00", with(List.of(quietUntilSeven(later)), rung("ana", 5)))
                .run("2026-11-25T07:01");

        assertThat(night.calls()).containsExactly("07:00:00 ana");
    }

    @Test
    void who_is_no_longer_quiet_is_called_when_the_setup_says_so() {
        Night night = new Night(with(List.of(ana()), rung("ana", 5)))
                .active(QUIET_NIGHT, TANK, Priority.MEDIUM)
                .setup("2026-11-25T03:00", with(List.of(never(ana())), rung("ana", 5)))
                .run("2026-11-25T03:01");

        assertThat(night.calls()).containsExactly("03:00:00 ana");
    }

    @Test
    void a_ladder_that_lost_the_rung_that_is_called_goes_on_from_its_foot() {
        Night night = new Night(with(List.of(never(ana()), ben()), rung("ana", 5), rung("ana", 60)))
                .active(QUIET_NIGHT, TANK, Priority.HIGH)
                .setup("2026-11-25T02:10", with(List.of(never(ana()), ben()), rung("ben", 5)))
                .run("2026-11-25T02:11");

        assertThat(night.calls()).containsExactly("02:00:00 ana", "02:05:00 ana", "02:10:00 ben");
    }

    @Test
    void a_site_that_vanishes_is_let_go_and_calls_again_when_it_is_back() {
        Setup setup = with(List.of(ben()), rung("ben", 60));
        Night night = new Night(setup)
                .active(QUIET_NIGHT, TANK, Priority.HIGH)
                .setup("2026-11-25T02:10", Setup.EMPTY)
                .run("2026-11-25T02:11");
        assertThat(night.picture().callouts()).noneMatch(Callout::live);

        night.setup("2026-11-25T02:20", setup).run("2026-11-25T02:21");

        assertThat(night.calls()).containsExactly("02:00:00 ben", "02:20:00 ben");
    }

    @Test
    void a_site_that_is_out_of_service_calls_nobody_for_any_of_its_points_until_it_is_back() {
        AlarmKey unknown = point(1);
        Setup setup = with(List.of(ben()), rung("ben", 60));
        Night night = new Night(setup)
                .active(QUIET_NIGHT, TANK, Priority.HIGH)
                .setup("2026-11-25T02:10", outOfService(setup))
                .active("2026-11-25T02:11", unknown, Priority.CRITICAL)
                .run("2026-11-25T02:12");
        assertThat(night.picture().alarm(TANK).state()).isEqualTo(AlarmState.OUT_OF_SERVICE);
        assertThat(night.picture().alarm(unknown).state()).isEqualTo(AlarmState.OUT_OF_SERVICE);

        night.setup("2026-11-25T02:20", setup).run("2026-11-25T02:21");

        assertThat(night.calls()).startsWith("02:00:00 ben", "02:20:00 ben");
        assertThat(night.picture().alarm(unknown).state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }

    private static Setup outOfService(Setup setup) {
        Site site = Fixtures.aSite();
        var worked = new Site(site.id(), site.name(), site.zone(), site.ladder(), site.fills(), site.empties(), false);
        return new Setup(
                List.of(worked),
                List.copyOf(setup.boxes().values()),
                setup.points(),
                List.copyOf(setup.contacts().values()),
                List.of(),
                List.copyOf(setup.ladders().values()));
    }

    @Test
    void the_silence_of_a_box_that_was_taken_away_is_over_and_its_deadline_with_it() {
        Night night = Night.withHeartbeats(theSetup())
                .stimulus(QUIET_NIGHT, new Stimulus.Beat("mesa-9-box", Heartbeat.BARE))
                .run("2026-11-25T02:04");
        var silent = new AlarmKey("mesa-9", "box", "silent");
        assertThat(night.picture().alarm(silent).active()).isTrue();

        night.setup("2026-11-25T02:05", with(List.of(ben()), rung("ben", 5))).run("2026-11-25T02:06");

        assertThat(night.picture().alarm(silent).active()).isFalse();
        assertThat(night.picture().box("mesa-9-box").orElseThrow().deadline()).isEmpty();
    }

    private static AlarmKey point(int i) {
        return new AlarmKey("mesa-9", "point-" + i, "high");
    }

    private static Rung rung(String contact, int minutes) {
        return new Rung(List.of(contact), Duration.ofMinutes(minutes), 1);
    }

    private static Setup with(List<Contact> contacts, Rung... rungs) {
        var ladder = new Ladder("night", Ladder.EndsWhen.ACKNOWLEDGED, List.of(rungs), 0);
        List<Site> sites = List.of(Fixtures.aSite());
        return new Setup(sites, List.of(), List.of(Fixtures.waterTank()), contacts, List.of(), List.of(ladder))
                .withBox("mesa-9-box", "mesa-9");
    }

    private static Contact never(Contact contact) {
        return quiet(contact, List.of());
    }

    private static Contact quietUntilSeven(Contact contact) {
        return quiet(
                contact,
                List.of(QuietHours.daily(LocalTime.of(21, 0), LocalTime.of(7, 0), Fixtures.CHICAGO, Priority.HIGH)));
    }

    private static Contact quiet(Contact contact, List<QuietHours> hours) {
        return new Contact(
                contact.id(),
                contact.name(),
                contact.zone(),
                contact.language(),
                contact.lines(),
                hours,
                contact.textsPerHour());
    }
}
