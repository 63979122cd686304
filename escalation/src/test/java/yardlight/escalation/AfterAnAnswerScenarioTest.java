package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.at;
import static yardlight.escalation.Fixtures.theSetup;
import static yardlight.escalation.OneCauseOneCalloutScenarioTest.HIGH;
import static yardlight.escalation.OneCauseOneCalloutScenarioTest.HIGH_HIGH;
import static yardlight.escalation.OneCauseOneCalloutScenarioTest.RISING;
import static yardlight.escalation.OneCauseOneCalloutScenarioTest.alarm;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Nuisance;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;

/** What comes of the same cause once somebody has answered: the worse of it wakes people, the lesser does not. */
class AfterAnAnswerScenarioTest {

    private static Night answered(Setup setup) {
        return new Night(setup).active("2026-11-25T02:13", HIGH).stimulus("2026-11-25T02:14", ack(HIGH, "ben"));
    }

    private static Stimulus ack(AlarmKey key, String by) {
        return new Stimulus.Acknowledge(key, by, "page", Optional.empty());
    }

    @Test
    void what_is_worse_is_called_and_says_what_it_was() {
        Night night = answered(theSetup()).active("2026-11-25T02:30", HIGH_HIGH).run("2026-11-25T02:31");

        assertThat(night.calls()).containsExactly("02:13:00 ana", "02:30:00 ana", "02:30:00 ben");
        assertThat(night.texts().get(night.texts().size() - 1).words())
                .isEqualTo("MESA 9 WATER TANK HIGH-HIGH 2:30 AM, was HIGH. Reply OK 48");
        assertThat(night.picture().callouts()).last().matches(Callout::live);
    }

    @Test
    void who_answered_before_hears_that_it_is_worse_unless_they_sleep() {
        Night night = new Night(theSetup())
                .active("2026-11-25T02:13", HIGH, Priority.LOW)
                .stimulus("2026-11-25T02:14", ack(HIGH, "ana"))
                .active("2026-11-25T02:30", HIGH_HIGH, Priority.MEDIUM)
                .run("2026-11-25T02:31");

        assertThat(night.calls()).noneMatch(call -> call.endsWith("ana"));
        assertThat(night.calls()).contains("02:30:00 ben");
    }

    @Test
    void what_is_no_worse_is_answered_as_well_and_calls_nobody() {
        Night night = answered(theSetup()).active("2026-11-25T02:30", RISING).run("2026-11-25T09:00");

        assertThat(night.calls()).containsExactly("02:13:00 ana");
        assertThat(alarm(night, RISING).state()).isEqualTo(AlarmState.ACKNOWLEDGED);
        assertThat(alarm(night, RISING).acknowledgedBy()).contains("ben");
        assertThat(night.picture().callouts())
                .singleElement()
                .satisfies(callout -> assertThat(callout.facts().alarms()).containsExactly(HIGH, RISING));
        assertThat(night.timeline())
                .anyMatch(line -> line.endsWith(
                        "water-tank/rising-fast acknowledged with water-tank/high by ben, is now acknowledged"))
                .anyMatch(line -> line.endsWith("callout 47 takes in water-tank/rising-fast"));
    }

    @Test
    void what_is_more_urgent_or_critical_is_called_however_little_it_says() {
        for (Priority priority : List.of(Priority.HIGH, Priority.CRITICAL)) {
            Night night = new Night(theSetup())
                    .active("2026-11-25T02:13", HIGH, priority == Priority.HIGH ? Priority.MEDIUM : Priority.CRITICAL)
                    .stimulus("2026-11-25T02:14", ack(HIGH, "ben"))
                    .active("2026-11-25T02:30", RISING, priority)
                    .run("2026-11-25T02:31");

            assertThat(night.calls()).as(priority.word()).contains("02:30:00 ana");
        }
    }

    /** Somebody answered what was foretold, and slept on. */
    @Test
    void a_last_limit_is_called_although_what_was_foretold_or_taken_for_a_leak_was_answered() {
        for (List<String> pair :
                List.of(List.of("overflow", "high-high"), List.of("leak", "low-low"), List.of("low-low", "leak"))) {
            AlarmKey first = OneCauseOneCalloutScenarioTest.tank(pair.get(0));
            Night night = new Night(theSetup())
                    .active("2026-11-25T02:13", first)
                    .stimulus("2026-11-25T02:14", ack(first, "ben"))
                    .active("2026-11-25T02:30", OneCauseOneCalloutScenarioTest.tank(pair.get(1)))
                    .run("2026-11-25T02:31");

            assertThat(night.calls()).as(pair.toString()).contains("02:30:00 ana");
        }
    }

    @Test
    void an_answer_counts_only_while_what_it_was_given_to_holds() {
        Night night = answered(theSetup())
                .normal("2026-11-25T02:20", HIGH)
                .active("2026-11-25T02:30", RISING)
                .run("2026-11-25T02:31");

        assertThat(night.calls()).containsExactly("02:13:00 ana", "02:30:00 ana");
    }

    @Test
    void so_does_one_that_was_put_aside_or_that_is_in_another_direction() {
        Night aside = new Night(theSetup())
                .active("2026-11-25T02:13", HIGH)
                .stimulus("2026-11-25T02:14", new Stimulus.Shelve(HIGH, Duration.ofHours(2), "gauge", "ben"))
                .active("2026-11-25T02:30", RISING)
                .run("2026-11-25T02:31");
        Night other = answered(theSetup())
                .active("2026-11-25T02:30", OneCauseOneCalloutScenarioTest.tank("falling-fast"))
                .run("2026-11-25T02:31");

        assertThat(aside.calls()).containsExactly("02:13:00 ana", "02:30:00 ana");
        assertThat(other.calls()).containsExactly("02:13:00 ana", "02:30:00 ana");
    }

    @Test
    void nothing_is_answered_by_it_while_something_of_the_cause_waits() {
        Night night = answered(theSetup())
                .active("2026-11-25T02:30", HIGH_HIGH)
                .active("2026-11-25T02:31", RISING)
                .run("2026-11-25T02:32");

        assertThat(alarm(night, RISING).state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(night.picture().callouts())
                .last()
                .satisfies(callout -> assertThat(callout.facts().alarms()).containsExactly(HIGH_HIGH, RISING));
    }

    @Test
    void what_is_called_again_after_an_answer_is_called_once_for_all_of_it() {
        Night night = answered(realarming()).active("2026-11-25T02:30", RISING).run("2026-11-25T03:15");

        assertThat(night.calls()).containsExactly("02:13:00 ana", "03:14:00 ana");
        assertThat(night.picture().callouts())
                .last()
                .satisfies(callout -> assertThat(callout.facts().alarms()).containsExactly(HIGH, RISING));
    }

    @Test
    void what_is_called_again_is_called_although_worse_was_answered() {
        Night night = answered(realarming())
                .active("2026-11-25T02:30", HIGH_HIGH)
                .stimulus("2026-11-25T02:31", ack(HIGH_HIGH, "ben"))
                .run("2026-11-25T03:15");

        assertThat(night.calls()).containsExactly("02:13:00 ana", "02:30:00 ana", "02:30:00 ben", "03:14:00 ana");
    }

    @Test
    void nor_is_it_silent_for_ever_because_one_always_answers_the_other() {
        Night night = answered(realarming()).active("2026-11-25T02:30", RISING);
        for (int hour = 3; hour < 9; hour++) {
            night.stimulus("2026-11-25T0" + hour + ":" + (4 * hour + 6), ack(HIGH, "ben"));
        }
        night.run("2026-11-25T09:30");

        assertThat(night.calls())
                .containsExactly(
                        "02:13:00 ana",
                        "03:14:00 ana",
                        "04:18:00 ana",
                        "05:22:00 ana",
                        "06:26:00 ana",
                        "07:30:00 ana",
                        "08:34:00 ana");
    }

    @Test
    void out_of_service_and_back_all_of_it_is_called_as_one() {
        Point tank = Fixtures.waterTank();
        var out = new Point(
                tank.id(), tank.site(), tank.name(), tank.unit(), tank.priority(), tank.timing(), Set.of(), false);
        Night night = new Night(theSetup())
                .active("2026-11-25T02:13", HIGH)
                .active("2026-11-25T02:13:10", HIGH_HIGH)
                .setup("2026-11-25T02:14", with(out))
                .setup("2026-11-25T02:40", theSetup())
                .run("2026-11-25T02:41");

        assertThat(night.texts())
                .filteredOn(text -> text.words().contains("WATER TANK"))
                .extracting(text -> text.at())
                .containsExactly(at("2026-11-25T02:13"), at("2026-11-25T02:13:10"), at("2026-11-25T02:40"));
        assertThat(night.picture().callouts()).last().satisfies(callout -> {
            assertThat(callout.live()).isTrue();
            assertThat(callout.facts().alarms()).containsExactly(HIGH_HIGH, HIGH);
        });
    }

    private static Setup realarming() {
        Point tank = Fixtures.waterTank();
        var timing = new Timing(
                Duration.ZERO, Duration.ZERO, false, Optional.of(Duration.ofHours(1)), Nuisance.Numbers.USUAL);
        return with(
                new Point(tank.id(), tank.site(), tank.name(), tank.unit(), tank.priority(), timing, Set.of(), true));
    }

    private static Setup with(Point tank) {
        return new Setup(
                List.of(Fixtures.aSite()),
                List.of(Fixtures.aBox()),
                List.of(tank, Fixtures.injectionPump()),
                List.of(Fixtures.ana(), Fixtures.ben()),
                List.of(Fixtures.crew()),
                List.of(Fixtures.night()));
    }
}
