package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.theSetup;
import static yardlight.escalation.OneCauseOneCalloutScenarioTest.HIGH;
import static yardlight.escalation.OneCauseOneCalloutScenarioTest.RISING;
import static yardlight.escalation.OneCauseOneCalloutScenarioTest.alarm;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.escalation.ladder.Callout;

/** What becomes of a callout that climbed its whole ladder in vain when its alarms go on in another one. */
class AfterAnExhaustedLadderScenarioTest {

    @Test
    void after_a_ladder_that_nobody_answered_the_next_one_takes_along_what_waits() {
        Night night = new Night(theSetup())
                .active("2026-11-25T02:13", HIGH)
                .run("2026-11-25T05:00")
                .active("2026-11-25T05:10", RISING)
                .run("2026-11-25T05:11");

        List<Callout> callouts = List.copyOf(night.picture().callouts());
        assertThat(callouts).hasSize(2);
        assertThat(callouts.get(0))
                .isInstanceOfSatisfying(
                        Callout.Ended.class,
                        ended -> assertThat(ended.reason()).isEqualTo("joined the callout with code 48"));
        assertThat(callouts.get(1).facts().alarms()).containsExactly(HIGH, RISING);
        assertThat(night.texts().get(night.texts().size() - 1).words())
                .isEqualTo("MESA 9 WATER TANK HIGH 2:13 AM. Reply OK 48");
    }

    /** Its sign had come and gone and so was not taken along; by its next flutter another ladder was being climbed. */
    @Test
    void a_ladder_that_nobody_answered_is_over_once_its_alarm_joins_another() {
        Night night = new Night(theSetup())
                .active("2026-11-25T02:13", HIGH)
                .run("2026-11-25T05:00")
                .normal("2026-11-25T05:01", HIGH)
                .active("2026-11-25T05:10", RISING)
                .active("2026-11-25T05:11", HIGH)
                .run("2026-11-25T05:12");

        List<Callout> callouts = List.copyOf(night.picture().callouts());
        assertThat(callouts).hasSize(2);
        assertThat(callouts.get(0))
                .isInstanceOfSatisfying(
                        Callout.Ended.class,
                        ended -> assertThat(ended.reason()).isEqualTo("joined the callout with code 48"));
        assertThat(callouts.get(1).facts().alarms()).containsExactly(RISING, HIGH);
        assertThat(night.timeline()).anyMatch(line -> line.endsWith("callout 48 takes in water-tank/high"));
    }

    /** The record of each of them says where it went on; its texts are found by that. */
    @Test
    void it_goes_on_for_those_that_stay_and_the_record_of_the_other_says_where_it_went() {
        Night night = new Night(theSetup())
                .active("2026-11-25T02:13", HIGH)
                .active("2026-11-25T02:14", RISING)
                .run("2026-11-25T05:00")
                .normal("2026-11-25T05:01", HIGH)
                .normal("2026-11-25T05:02", RISING)
                .active("2026-11-25T05:10", RISING)
                .run("2026-11-25T05:12");

        List<Callout> callouts = List.copyOf(night.picture().callouts());
        assertThat(callouts).first().isInstanceOf(Callout.Exhausted.class);
        assertThat(callouts.get(1).facts().alarms()).containsExactly(RISING);
        assertThat(night.log())
                .filteredOn(entry -> entry.words()
                        .equals("callout 47 ended for water-tank/rising-fast: joined the callout with code 48"))
                .singleElement()
                .satisfies(entry -> assertThat(entry.about())
                        .containsEntry("callout", callouts.get(0).id())
                        .containsEntry("alarm", alarm(night, RISING).id()));
    }

    @Test
    void the_record_of_its_first_alarm_says_so_too_while_others_stay() {
        Night night = new Night(theSetup())
                .active("2026-11-25T02:13", HIGH)
                .active("2026-11-25T02:14", RISING)
                .run("2026-11-25T05:00")
                .normal("2026-11-25T05:01", HIGH)
                .normal("2026-11-25T05:02", RISING)
                .active("2026-11-25T05:10", HIGH)
                .run("2026-11-25T05:12");

        List<Callout> callouts = List.copyOf(night.picture().callouts());
        assertThat(callouts).first().isInstanceOf(Callout.Exhausted.class);
        assertThat(night.log())
                .filteredOn(entry ->
                        entry.words().equals("callout 47 ended for water-tank/high: joined the callout with code 48"))
                .singleElement()
                .satisfies(entry -> assertThat(entry.about())
                        .containsEntry("alarm", alarm(night, HIGH).id()));
    }
}
