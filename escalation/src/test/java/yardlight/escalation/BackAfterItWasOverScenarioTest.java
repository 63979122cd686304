package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.at;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Setup;

/** People read that an alarm is over, and then it is there again. */
class BackAfterItWasOverScenarioTest {

    private static final Rung ANA = rung("ana", 30);
    private static final Rung BEN = rung("ben", 15);

    @Test
    void when_the_ladder_is_at_its_end_it_is_climbed_once_more() {
        Night night = new Night(setup(new Rung(List.of("ana"), Duration.ofMinutes(5), 2)))
                .active("2026-11-25T02:00", TANK)
                .normal("2026-11-25T02:06", TANK)
                .active("2026-11-25T02:09", TANK)
                .run("2026-11-25T12:00");

        assertThat(night.news())
                .hasSize(1)
                .first()
                .asString()
                .startsWith("02:08:00 ana")
                .contains("is back to normal");
        assertThat(night.calls()).containsExactly("02:00:00 ana", "02:05:00 ana", "02:09:00 ana", "02:14:00 ana");
        assertThat(night.timeline()).contains("Wed 02:19:00  callout 47 exhausted: nobody answered");
    }

    @Test
    void who_read_that_hears_at_once_and_the_ladder_goes_on() {
        Night night = new Night(setup(ANA, BEN))
                .active("2026-11-25T02:00", TANK)
                .normal("2026-11-25T02:06", TANK)
                .active("2026-11-25T02:09", TANK)
                .run("2026-11-25T02:40");

        assertThat(night.calls()).containsExactly("02:00:00 ana", "02:09:00 ana", "02:30:00 ben");
    }

    /** The call of a ladder that is still climbed can be what says that it is over; nothing is left of it, so that it is climbed once more. */
    @Test
    void it_counts_too_when_it_was_the_last_call_that_said_so() {
        Night night = new Night(setup(ANA, BEN))
                .active("2026-11-25T02:00", TANK)
                .normal("2026-11-25T02:29", TANK)
                .active("2026-11-25T02:33", TANK)
                .run("2026-11-25T04:00");

        assertThat(night.texts().get(1).words()).contains("returned 2:29 AM");
        assertThat(night.calls()).containsExactly("02:00:00 ana", "02:30:00 ben", "02:33:00 ana", "03:03:00 ben");
    }

    @Test
    void an_alarm_that_flutters_before_anybody_read_that_is_no_further_text() {
        Night night = new Night(setup(ANA)).active("2026-11-25T02:00", TANK);
        for (int minute = 1; minute < 20; minute += 3) {
            String local = "2026-11-25T02:" + two(minute);
            night.normal(local + ":00", TANK).active(local + ":30", TANK);
        }
        night.run("2026-11-25T02:25");

        assertThat(night.calls()).containsExactly("02:00:00 ana");
        assertThat(night.news()).isEmpty();
    }

    /** It is said once in a callout that it is over, so what comes and goes is one text more and not one for each time. */
    @Test
    void what_comes_and_goes_all_night_is_no_storm() {
        Night night = new Night(setup(rung("ana", 600))).active("2026-11-25T01:00", TANK);
        for (int minute = 5; minute < 50; minute += 10) {
            night.normal("2026-11-25T01:" + two(minute), TANK).active("2026-11-25T01:" + two(minute + 5), TANK);
        }
        night.run("2026-11-25T02:25");

        assertThat(night.texts()).hasSizeLessThanOrEqualTo(4);
    }

    /** A silence within half an hour goes on in its callout, which had ended. */
    @Test
    void a_box_that_is_silent_again_after_it_was_told_to_be_back_calls_at_once() {
        var ladder = new Ladder("night", Ladder.EndsWhen.NORMAL, List.of(rung("ben", 15)), 0);
        Night night = Night.withHeartbeats(Fixtures.calling(ladder));
        beats(night, "2026-11-25T01:00", 5);
        beats(night, "2026-11-25T01:14", 17);

        night.run("2026-11-25T06:00");

        assertThat(night.calls()).containsExactly("01:08:00 ben", "01:34:00 ben");
        assertThat(night.news()).hasSize(1).first().asString().startsWith("01:16:00 ben");
        assertThat(night.picture().callouts()).singleElement().isInstanceOf(Callout.Exhausted.class);
    }

    private static void beats(Night night, String from, int minutes) {
        Instant start = at(from);
        for (int minute = 0; minute <= minutes; minute++) {
            Instant when = start.plus(Duration.ofMinutes(minute));
            night.stimulus(
                    when.atZone(Fixtures.CHICAGO).toLocalDateTime().toString(),
                    new Stimulus.Beat("mesa-9-box", Heartbeat.BARE));
        }
    }

    private static String two(int minute) {
        return String.format("%02d", minute);
    }

    private static Rung rung(String contact, int minutes) {
        return new Rung(List.of(contact), Duration.ofMinutes(minutes), 1);
    }

    private static Setup setup(Rung... rungs) {
        return new Setup(
                List.of(Fixtures.aSite()),
                List.of(Fixtures.aBox()),
                List.of(Fixtures.waterTank()),
                List.of(Fixtures.ana(), Fixtures.ben()),
                List.of(),
                List.of(new Ladder("night", Ladder.EndsWhen.ACKNOWLEDGED, List.of(rungs), 0)));
    }
}
