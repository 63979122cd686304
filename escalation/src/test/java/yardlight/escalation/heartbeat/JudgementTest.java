package yardlight.escalation.heartbeat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Bayes' rule over three causes, worked by hand. */
class JudgementTest {

    private static final Instant AT = Instant.parse("2026-11-25T08:13:00Z");

    @Test
    void nothing_known_is_undecided_between_power_and_link() {
        assertThat(Judgement.NOTHING_KNOWN.verdict()).isEqualTo(Verdict.SILENT);
        assertThat(Judgement.NOTHING_KNOWN.confidence()).isEqualTo(0.485, within(1e-12));
        assertThat(Judgement.NOTHING_KNOWN.reasons()).isEmpty();
    }

    @Test
    void a_feed_that_was_off_is_the_power() {
        Judgement judgement = by(Clue.FEED_OFF);

        // 0.485 x 0.90 against 0.485 x 0.04 and 0.03 x 0.04.
        assertThat(judgement.power()).isEqualTo(0.4365 / (0.4365 + 0.0194 + 0.0012), within(1e-12));
        assertThat(judgement.verdict()).isEqualTo(Verdict.POWER_OFF);
        assertThat(judgement.confidence()).isEqualTo(judgement.power());
    }

    @Test
    void what_the_box_did_itself_stays_undecided() {
        Judgement judgement = by(Clue.FEED_ON, Clue.LINK_LIVES, Clue.RESTARTED_ON_BATTERY);

        assertThat(judgement.verdict()).isEqualTo(Verdict.SILENT);
        assertThat(judgement.confidence()).isGreaterThan(Math.max(judgement.power(), judgement.link()));
    }

    @Test
    void of_the_same_clue_twice_the_later_counts_once() {
        Judgement once = by(Clue.RAN_ON);
        Judgement twice = once.with(List.of(new Evidence(Clue.RAN_ON, AT.plusSeconds(60), "loma-4-box")));

        assertThat(twice.link()).isEqualTo(once.link());
        assertThat(twice.reasons()).containsExactly("box loma-4-box ran on through the silence");
    }

    @Test
    void a_weight_says_for_what_it_speaks() {
        assertThat(new Evidence(Clue.FEED_OFF, AT, "wells").weight()).isEqualTo(Math.log10(22.5), within(1e-12));
        assertThat(new Evidence(Clue.RAN_ON, AT, "").weight()).isNegative();
    }

    private static Judgement by(Clue... clues) {
        return Judgement.by(
                Stream.of(clues).map(clue -> new Evidence(clue, AT, "it")).toList());
    }
}
