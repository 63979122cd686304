package yardlight.escalation.heartbeat;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.setup.Box;

/** A box on the hub has been silent for three minutes, and another one is asked. */
class InquiryTest {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");

    @Test
    void a_box_that_has_just_been_heard_is_a_living_witness() {
        assertThat(asked(heard("pico-2", 30, Map.of())).evidence()).containsKey(Clue.LINK_LIVES);
    }

    @Test
    void one_that_has_missed_a_beat_since_is_none() {
        assertThat(asked(heard("pico-2", 80, Map.of())).evidence()).doesNotContainKey(Clue.LINK_LIVES);
    }

    @Test
    void one_that_could_not_be_heard_has_missed_nothing() {
        Witness late = heard("pico-2", 80, Map.of());

        assertThat(asked(new Witness(late.box(), late.watch(), NOW.minusSeconds(60)))
                        .evidence())
                .containsKey(Clue.LINK_LIVES);
    }

    @Test
    void another_at_the_site_tells_of_the_feed_also_when_it_hangs_on_another_one() {
        assertThat(asked(heard("loma-4", 20, Map.of("wells", false))).verdict()).isEqualTo(Verdict.POWER_OFF);
    }

    @Test
    void one_on_the_same_feed_tells_of_it_also_with_its_last_breath() {
        Witness gasped = witness("loma-4-second", "loma-4", "wells", 170, Map.of("wells", false));

        assertThat(asked(gasped).verdict()).isEqualTo(Verdict.POWER_OFF);
    }

    @Test
    void one_at_another_site_tells_nothing_of_a_feed_that_it_does_not_hang_on() {
        assertThat(asked(heard("pico-2", 20, Map.of("wells", false))).verdict()).isEqualTo(Verdict.SILENT);
    }

    private static Judgement asked(Witness other) {
        return new Inquiry(witness("loma-4-first", "loma-4", "wells", 180, Map.of()), List.of(other), NOW).judgement();
    }

    private static Witness heard(String site, int ago, Map<String, Boolean> feeds) {
        return witness(site + "-pump", site, "pump", ago, feeds);
    }

    private static Witness witness(String id, String site, String feed, int ago, Map<String, Boolean> feeds) {
        var box = new Box(
                id,
                site,
                Optional.of(feed),
                Optional.of("hub"),
                false,
                Optional.of(Duration.ofMinutes(1)),
                Duration.ofMinutes(2));
        var said = new Heartbeat(Optional.empty(), feeds, Optional.empty(), Optional.empty(), Optional.empty());
        return new Witness(box, new BoxWatch(id, NOW.minusSeconds(ago), Optional.empty(), false, said));
    }
}
