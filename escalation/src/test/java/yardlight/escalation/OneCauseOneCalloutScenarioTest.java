package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.at;
import static yardlight.escalation.Fixtures.theSetup;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.reading.Reading;

/** Alarms of one point and one direction, none of which anybody has answered yet. */
class OneCauseOneCalloutScenarioTest {

    static final AlarmKey RISING = tank("rising-fast");
    static final AlarmKey HIGH = tank("high");
    static final AlarmKey HIGH_HIGH = tank("high-high");
    static final AlarmKey OVERFLOW = tank("overflow");
    private static final AlarmKey LOW = tank("low");

    static AlarmKey tank(String condition) {
        return new AlarmKey("mesa-9", "water-tank", condition);
    }

    @Test
    void a_reading_beyond_two_limits_is_one_callout_and_its_text_says_the_worse() {
        Night night = new Night(Fixtures.measuring())
                .stimulus("2026-11-25T02:13", reading(18.4))
                .run("2026-11-25T02:14");

        assertThat(night.texts())
                .singleElement()
                .satisfies(text -> assertThat(text.words())
                        .isEqualTo("MESA 9 WATER TANK HIGH-HIGH 18.4 ft (limit 18.0) 2:13 AM. Reply OK 47"));
        assertThat(callout(night).facts().alarms()).containsExactly(HIGH_HIGH, HIGH);
    }

    private static Stimulus reading(double feet) {
        return new Stimulus.Measured(
                "mesa-9-box", List.of(new Reading("mesa-9", "water-tank", feet, at("2026-11-25T02:13"))));
    }

    @Test
    void what_is_worse_joins_is_told_at_once_and_the_ladder_goes_on_as_it_was() {
        Night night = new Night(theSetup())
                .active("2026-11-25T02:13", HIGH)
                .active("2026-11-25T02:15", HIGH_HIGH)
                .run("2026-11-25T02:20");

        assertThat(night.calls()).containsExactly("02:13:00 ana", "02:15:00 ana", "02:18:00 ana");
        assertThat(night.texts().get(1).words())
                .isEqualTo("MESA 9 WATER TANK HIGH-HIGH 2:15 AM, was HIGH. Reply OK 47");
        assertThat(night.texts().get(2).words()).startsWith("MESA 9 WATER TANK HIGH-HIGH 2:15 AM");
        assertThat(callout(night).facts().alarms()).containsExactly(HIGH, HIGH_HIGH);
        assertThat(night.timeline()).anyMatch(line -> line.endsWith("callout 47 takes in water-tank/high-high"));
    }

    @Test
    void what_is_no_worse_joins_without_a_text() {
        Night night = new Night(theSetup())
                .active("2026-11-25T02:13", HIGH_HIGH)
                .active("2026-11-25T02:14", HIGH)
                .active("2026-11-25T02:15", RISING)
                .run("2026-11-25T02:20");

        assertThat(night.calls()).containsExactly("02:13:00 ana", "02:18:00 ana");
        assertThat(night.texts().get(1).words()).isEqualTo("MESA 9 WATER TANK HIGH-HIGH 2:13 AM. Reply OK 47");
        assertThat(callout(night).facts().alarms()).containsExactly(HIGH_HIGH, HIGH, RISING);
    }

    @Test
    void one_answer_answers_all_of_it() {
        Night night = new Night(theSetup())
                .answers("ana", Duration.ofMinutes(4))
                .active("2026-11-25T02:13", HIGH)
                .active("2026-11-25T02:15", HIGH_HIGH)
                .active("2026-11-25T02:16", RISING)
                .run("2026-11-25T09:00");

        assertThat(night.calls()).containsExactly("02:13:00 ana", "02:15:00 ana", "02:18:00 ana");
        assertThat(callout(night)).isInstanceOf(Callout.Answered.class);
        assertThat(night.picture().alarmsAt("mesa-9"))
                .hasSize(3)
                .allMatch(alarm -> alarm.state() == AlarmState.ACKNOWLEDGED);
    }

    @Test
    void the_reader_of_a_text_answers_what_joined_later_and_is_lesser_and_nothing_that_is_worse() {
        var play = new Play(theSetup());
        play.at("2026-11-25T02:13", reported("2026-11-25T02:13", HIGH));
        var first = play.last();
        play.at("2026-11-25T02:14", reported("2026-11-25T02:14", RISING));
        play.at("2026-11-25T02:15", reported("2026-11-25T02:15", HIGH_HIGH));
        play.at("2026-11-25T02:15:30", new Stimulus.AnswerNotice(first.id(), "link"));

        assertThat(play.picture.alarm(HIGH).state()).isEqualTo(AlarmState.ACKNOWLEDGED);
        assertThat(play.picture.alarm(RISING).state()).isEqualTo(AlarmState.ACKNOWLEDGED);
        assertThat(play.picture.alarm(HIGH_HIGH).state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(play.picture.callouts()).singleElement().matches(Callout::live);
        assertThat(play.log)
                .contains("water-tank/rising-fast acknowledged with water-tank/high by ana, is now acknowledged");
    }

    @Test
    void who_answers_the_worst_on_its_page_has_answered_the_rest() {
        Night night = new Night(theSetup())
                .active("2026-11-25T02:13", HIGH)
                .active("2026-11-25T02:15", HIGH_HIGH)
                .stimulus("2026-11-25T02:16", new Stimulus.Acknowledge(HIGH_HIGH, "ben", "page", Optional.empty()))
                .run("2026-11-25T09:00");

        assertThat(night.calls()).containsExactly("02:13:00 ana", "02:15:00 ana");
        assertThat(alarm(night, HIGH).acknowledgedBy()).contains("ben");
        assertThat(callout(night)).isInstanceOf(Callout.Answered.class);
    }

    @Test
    void who_answers_the_lesser_one_has_not_answered_the_worse() {
        Night night = new Night(theSetup())
                .active("2026-11-25T02:13", HIGH)
                .active("2026-11-25T02:15", HIGH_HIGH)
                .stimulus("2026-11-25T02:16", new Stimulus.Acknowledge(HIGH, "ben", "page", Optional.empty()))
                .run("2026-11-25T02:20");

        assertThat(night.calls()).containsExactly("02:13:00 ana", "02:15:00 ana", "02:18:00 ana");
        assertThat(callout(night).live()).isTrue();
    }

    @Test
    void nor_is_what_holds_answered_by_an_answer_to_what_is_over() {
        Night night = new Night(theSetup())
                .active("2026-11-25T02:13", HIGH)
                .active("2026-11-25T02:15", HIGH_HIGH)
                .normal("2026-11-25T02:16", HIGH_HIGH)
                .stimulus("2026-11-25T02:17", new Stimulus.Acknowledge(HIGH_HIGH, "ben", "page", Optional.empty()))
                .run("2026-11-25T02:20");

        assertThat(alarm(night, HIGH).state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(callout(night).live()).isTrue();
    }

    @Test
    void one_that_returns_leaves_the_others_to_be_called() {
        Night night = new Night(theSetup())
                .active("2026-11-25T02:13", HIGH)
                .active("2026-11-25T02:15", HIGH_HIGH)
                .normal("2026-11-25T02:16", HIGH_HIGH)
                .run("2026-11-25T02:19");

        assertThat(night.calls()).containsExactly("02:13:00 ana", "02:15:00 ana", "02:18:00 ana");
        assertThat(night.texts().get(2).words()).isEqualTo("MESA 9 WATER TANK HIGH 2:13 AM. Reply OK 47");
    }

    @Test
    void one_that_is_put_aside_leaves_the_others_to_be_called() {
        Night night = new Night(theSetup())
                .active("2026-11-25T02:13", HIGH)
                .active("2026-11-25T02:15", HIGH_HIGH)
                .stimulus("2026-11-25T02:16", new Stimulus.Shelve(HIGH_HIGH, Duration.ofHours(1), "gauge", "ben"))
                .run("2026-11-25T02:19");

        assertThat(night.texts().get(2).words()).isEqualTo("MESA 9 WATER TANK HIGH 2:13 AM. Reply OK 47");
        assertThat(callout(night).live()).isTrue();
    }

    @Test
    void once_all_of_it_is_over_that_is_told_as_one_thing() {
        Night night = new Night(theSetup())
                .answers("ana", Duration.ofMinutes(1))
                .active("2026-11-25T02:13", HIGH)
                .active("2026-11-25T02:13:10", HIGH_HIGH)
                .normal("2026-11-25T02:20", HIGH_HIGH)
                .normal("2026-11-25T02:40", HIGH)
                .run("2026-11-25T09:00");

        assertThat(night.news())
                .containsExactly("02:42:00 ana MESA 9 WATER TANK HIGH-HIGH is back to normal 2:40 AM, after 27 min."
                        + " No reply needed.");
    }

    @Test
    void what_became_critical_is_worth_the_whole_ladder_from_its_foot_whoever_sleeps() {
        var ladder = new Ladder(
                "night",
                Ladder.EndsWhen.ACKNOWLEDGED,
                List.of(
                        new Rung(List.of("ana"), Duration.ofMinutes(5), 1),
                        new Rung(List.of("ben"), Duration.ofMinutes(30), 1)),
                0);
        Night night = new Night(Fixtures.calling(ladder))
                .active("2026-11-25T02:13", HIGH, Priority.MEDIUM)
                .active("2026-11-25T02:15", OVERFLOW, Priority.CRITICAL)
                .run("2026-11-25T02:21");

        // Ana sleeps through medium; Ben was called, and hears at once that it became worse.
        assertThat(night.calls()).containsExactly("02:13:00 ben", "02:15:00 ben", "02:15:00 ana", "02:20:00 ben");
        assertThat(callout(night).facts().priority()).isEqualTo(Priority.CRITICAL);
    }

    @Test
    void a_text_on_its_way_does_not_know_of_what_came_after_it() {
        var play = new Play(theSetup());
        play.at("2026-11-25T02:13", reported("2026-11-25T02:13", HIGH));
        play.at("2026-11-25T02:13:02", reported("2026-11-25T02:13:02", HIGH_HIGH));

        assertThat(play.picture.notices()).hasSize(2);
        assertThat(play.last().text()).startsWith("MESA 9 WATER TANK HIGH-HIGH 2:13 AM, was HIGH.");
    }

    @Test
    void another_direction_is_another_cause() {
        Night night = new Night(theSetup())
                .active("2026-11-25T02:13", HIGH)
                .active("2026-11-25T02:13:30", LOW)
                .active("2026-11-25T02:14:30", tank("hatch-open"))
                .run("2026-11-25T02:15:30");

        assertThat(night.picture().callouts()).hasSize(3);
        assertThat(night.texts()).hasSize(3);
    }

    static Stimulus reported(String local, AlarmKey key) {
        return new Stimulus.Reported("mesa-9-box", List.of(Fixtures.active(key, at(local))));
    }

    static Alarm alarm(Night night, AlarmKey key) {
        return night.picture().alarm(key);
    }

    private static Callout callout(Night night) {
        assertThat(night.picture().callouts()).hasSize(1);
        return night.picture().callouts().iterator().next();
    }
}
