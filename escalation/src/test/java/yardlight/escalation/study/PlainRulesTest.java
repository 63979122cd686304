package yardlight.escalation.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.escalation.heartbeat.Verdict;

/** Three boxes share a link and fall silent after 10 min; the fourth is silent for itself after 20. */
class PlainRulesTest {

    private static final long UNTIL = 1_800_000;

    @Test
    void one_text_for_each_box_that_is_late_by_the_plainest_rule() {
        List<Told> texts =
                PlainRules.ALWAYS_POWER.read(Small.WORLD, posts(), UNTIL).texts();

        assertThat(texts).hasSize(4).extracting(Told::verdict).containsOnly(Verdict.POWER_OFF);
        assertThat(texts).extracting(Told::at).containsExactly(780_000L, 780_010L, 780_020L, 1_380_000L);
    }

    @Test
    void one_text_for_the_link_by_the_majority() {
        List<Told> texts =
                PlainRules.MAJORITY_BY_LINK.read(Small.WORLD, posts(), UNTIL).texts();

        assertThat(texts).extracting(Told::verdict).containsExactly(Verdict.COMMS_LOSS, Verdict.POWER_OFF);
    }

    private static List<Post> posts() {
        return Small.inOrder(
                Small.post(0, 540_000),
                Small.post(0, 600_000),
                Small.post(1, 600_010),
                Small.post(2, 600_020),
                Small.post(3, 1_200_000));
    }
}
