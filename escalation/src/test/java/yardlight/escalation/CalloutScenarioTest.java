package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.PUMP;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.theSetup;

import java.time.Duration;
import java.util.ArrayList;
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
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;

/** Scripted nights: who is texted when. */
class CalloutScenarioTest {

    @Test
    void nobody_answers_so_the_whole_ladder_is_climbed_twice_and_then_exhausted() {
        Night night = new Night(theSetup()).active("2026-11-25T02:13", TANK).run("2026-11-25T09:00");

        // The crew's tour is Ana's this week.
        assertThat(night.calls())
                .containsExactly(
                        "02:13:00 ana",
                        "02:18:00 ana",
                        "02:23:00 ana",
                        "02:28:00 ana",
                        "02:28:00 ben",
                        "02:43:00 ana",
                        "02:43:00 ben",
                        "02:58:00 ana",
                        "02:58:00 ben",
                        "03:13:00 ana",
                        "03:18:00 ana",
                        "03:23:00 ana",
                        "03:28:00 ana",
                        "03:28:00 ben",
                        "03:43:00 ana",
                        "03:43:00 ben",
                        "03:58:00 ana",
                        "03:58:00 ben");
        assertThat(night.picture().callouts()).singleElement().isInstanceOf(Callout.Exhausted.class);
    }

    @Test
    void the_next_one_answers_and_nobody_is_called_after_that() {
        Night night = new Night(theSetup())
                .answers("ben", Duration.ofMinutes(2))
                .active("2026-11-25T02:13", TANK)
                .run("2026-11-26T02:13");

        assertThat(night.calls())
                .containsExactly("02:13:00 ana", "02:18:00 ana", "02:23:00 ana", "02:28:00 ana", "02:28:00 ben");
        assertThat(night.picture().callouts())
                .singleElement()
                .isInstanceOfSatisfying(
                        Callout.Answered.class,
                        answered -> assertThat(answered.by()).isEqualTo("ben"));
    }

    @Test
    void a_ladder_that_ends_when_normal_ends_when_the_alarm_returns() {
        Night night = new Night(with(theSetup(), endingWhenNormal()))
                .active("2026-11-25T02:13", TANK)
                .normal("2026-11-25T02:15", TANK)
                .run("2026-11-25T09:00");

        assertThat(night.calls()).containsExactly("02:13:00 ana");
        assertThat(night.picture().callouts()).singleElement().isInstanceOf(Callout.Ended.class);
    }

    @Test
    void quiet_hours_hold_until_they_end_and_say_it_in_one_message() {
        Night night = new Night(onlyAna())
                .active("2026-11-25T02:13", new AlarmKey("mesa-9", "door", "open"), Priority.MEDIUM)
                .active("2026-11-25T03:00", new AlarmKey("mesa-9", "battery", "low"), Priority.LOW)
                .run("2026-11-25T06:04");

        assertThat(night.calls()).containsExactly("06:00:00 ana");
        assertThat(night.picture().notices())
                .filteredOn(notice -> notice.state() == NoticeState.BUNDLED)
                .hasSize(2);
    }

    @Test
    void what_is_held_and_answered_before_quiet_hours_end_is_never_sent() {
        var door = new AlarmKey("mesa-9", "door", "open");
        Night night = new Night(onlyAna())
                .active("2026-11-25T02:13", door, Priority.MEDIUM)
                .stimulus("2026-11-25T02:30", new Stimulus.Acknowledge(door, "owner", "page", Optional.empty()))
                .run("2026-11-25T12:00");

        assertThat(night.calls()).isEmpty();
        assertThat(night.picture().notices()).extracting(Notice::state).containsExactly(NoticeState.CANCELLED);
    }

    @Test
    void a_rung_that_sleeps_is_passed_without_waiting() {
        Night night = new Night(theSetup())
                .active("2026-11-25T02:13", new AlarmKey("mesa-9", "door", "open"), Priority.MEDIUM)
                .run("2026-11-25T02:14");

        assertThat(night.calls()).containsExactly("02:13:00 ben");
    }

    @Test
    void an_alarm_that_becomes_urgent_wakes_whom_quiet_hours_protected() {
        Night night = new Night(onlyAna())
                .active("2026-11-25T02:13", TANK, Priority.MEDIUM)
                .active("2026-11-25T02:20", TANK, Priority.CRITICAL)
                .run("2026-11-25T02:21");

        assertThat(night.calls()).containsExactly("02:20:00 ana");
    }

    @Test
    void short_waits_are_kept_although_they_make_many_texts_in_a_minute() {
        var ladder = new Ladder(
                "night", Ladder.EndsWhen.ACKNOWLEDGED, List.of(new Rung(List.of("ana"), Duration.ofSeconds(5), 4)), 0);
        Night night = new Night(with(theSetup(), ladder))
                .active("2026-11-25T02:13", TANK)
                .run("2026-11-25T02:14");

        assertThat(night.calls()).containsExactly("02:13:00 ana", "02:13:05 ana", "02:13:10 ana", "02:13:15 ana");
    }

    @Test
    void a_shelved_alarm_calls_nobody_and_calls_when_the_shelf_ends_if_it_came_anew() {
        Night night = new Night(theSetup())
                .stimulus("2026-11-25T02:00", new Stimulus.Shelve(TANK, Duration.ofHours(2), "hauling water", "owner"))
                .active("2026-11-25T02:13", TANK)
                .run("2026-11-25T04:01");

        assertThat(night.calls()).containsExactly("04:00:00 ana");
    }

    @Test
    void waits_last_as_long_as_they_say_on_the_night_the_clock_goes_back() {
        // 01:58 CDT; the hour from 01:00 to 02:00 comes twice.
        Night night = new Night(theSetup()).active("2026-11-01T01:58", PUMP).run("2026-11-01T01:59");

        night.run("2026-11-01T02:30");

        List<Night.Text> texts = night.texts();
        assertThat(Duration.between(texts.get(0).at(), texts.get(1).at())).isEqualTo(Duration.ofMinutes(5));
        assertThat(Duration.between(texts.get(1).at(), texts.get(2).at())).isEqualTo(Duration.ofMinutes(5));
    }

    private static Setup onlyAna() {
        var ladder = new Ladder(
                "night", Ladder.EndsWhen.ACKNOWLEDGED, List.of(new Rung(List.of("ana"), Duration.ofMinutes(5), 2)), 0);
        return with(theSetup(), ladder);
    }

    private static Ladder endingWhenNormal() {
        return new Ladder(
                "night",
                Ladder.EndsWhen.NORMAL,
                theSetup().ladders().get("night").rungs(),
                0);
    }

    private static Setup with(Setup setup, Ladder ladder) {
        return new Setup(
                List.copyOf(setup.sites().values()),
                List.copyOf(setup.boxes().values()),
                setup.points(),
                new ArrayList<Contact>(setup.contacts().values()),
                List.copyOf(setup.rosters().values()),
                List.of(ladder));
    }

    @Test
    void silence_past_the_deadline_is_an_alarm_that_ends_when_the_box_is_back() {
        var silent = new AlarmKey("mesa-9", "box", "silent");
        var beat = new Stimulus.Beat("mesa-9-box", Heartbeat.BARE);
        Night night = Night.withHeartbeats(theSetup())
                .stimulus("2026-11-25T02:00", beat)
                .run("2026-11-25T02:02:59");
        assertThat(night.calls()).isEmpty();

        night.run("2026-11-25T02:03");
        assertThat(night.calls()).containsExactly("02:03:00 ana");

        night.stimulus("2026-11-25T02:04", beat).run("2026-11-25T02:04");
        assertThat(night.picture().alarm(silent).state()).isEqualTo(AlarmState.RETURNED_UNACKNOWLEDGED);
    }
}
