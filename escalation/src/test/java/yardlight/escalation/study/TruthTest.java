package yardlight.escalation.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.escalation.heartbeat.Verdict;

/** What should have been said of what happened. */
class TruthTest {

    private static final Span SPAN = new Span(600_000, 1_800_000);
    private static final long LATER = 3_600_000;

    @Test
    void a_box_without_its_mains_has_no_power() {
        assertThat(of(Small.feedOff(0, SPAN), 0)).isEqualTo(Truth.POWER);
    }

    @Test
    void a_box_that_runs_behind_a_lost_link_has_lost_its_path() {
        assertThat(of(Small.linkDown(0, SPAN), 1)).isEqualTo(Truth.COMMS);
        assertThat(of(Small.radioDown(1, SPAN), 1)).isEqualTo(Truth.COMMS);
    }

    @Test
    void a_box_on_its_battery_behind_a_lost_link_is_both() {
        Outage storm = Small.feedOff(1, SPAN);
        storm.linksDown()[0] = SPAN;

        assertThat(of(storm, 2)).isEqualTo(Truth.BOTH);
    }

    @Test
    void a_box_that_was_dead_before_its_link_was_lost_is_not() {
        Outage storm = Small.feedOff(0, SPAN);
        storm.linksDown()[0] = new Span(700_000, 1_800_000);

        assertThat(of(storm, 0)).isEqualTo(Truth.POWER);
    }

    @Test
    void of_a_box_that_crashed_nothing_definite_is_right() {
        Truth truth = of(Small.crashed(0, SPAN), 0);

        assertThat(truth).isEqualTo(Truth.BOX);
        assertThat(truth.wrong(Verdict.POWER_OFF)).isTrue();
        assertThat(truth.wrong(Verdict.COMMS_LOSS)).isTrue();
        assertThat(truth.wrong(Verdict.SILENT)).isFalse();
    }

    @Test
    void what_had_not_happened_yet_was_not_the_truth() {
        Outage storm = Small.feedOff(1, new Span(900_000, 1_800_000));
        storm.linksDown()[0] = SPAN;

        assertThat(Truth.of(storm, Set.of(2), World.NONE, 700_000)).isEqualTo(Truth.COMMS);
    }

    private static Truth of(Outage outage, int box) {
        return Truth.of(outage, Set.of(box), World.NONE, LATER);
    }
}
