package yardlight.escalation.ladder;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.at;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Priority;

/** A callout always has either a time at which it goes on or a recorded end. */
class CalloutTest {

    private static final Instant NOW = at("2026-11-25T02:13");

    private static final Callout.Facts FACTS = new Callout.Facts(
            "c1",
            47,
            "mesa-9",
            "night",
            Priority.HIGH,
            List.of(Fixtures.TANK),
            NOW,
            1,
            1,
            Set.of("ben", "ana"),
            Map.of("ben", NOW, "ana", NOW));

    @Test
    void goes_on_by_itself_while_it_calls_or_is_held() {
        Callout calling = new Callout.Calling(FACTS, Place.FOOT, NOW.plusSeconds(300));
        Callout held = new Callout.Held(FACTS, Place.FOOT, NOW.plusSeconds(900));

        assertThat(calling.dueAt()).contains(NOW.plusSeconds(300));
        assertThat(held.dueAt()).contains(NOW.plusSeconds(900));
        assertThat(calling.live()).isTrue();
        assertThat(held.live()).isTrue();
    }

    @Test
    void has_an_end_otherwise() {
        Callout answered = new Callout.Answered(FACTS, Place.FOOT, "ana", NOW);
        Callout ended = new Callout.Ended(FACTS, Place.FOOT, Optional.empty(), "returned", NOW);
        Callout exhausted = new Callout.Exhausted(FACTS, Place.FOOT, NOW);

        assertThat(List.of(answered, ended, exhausted)).allSatisfy(over -> {
            assertThat(over.dueAt()).isEmpty();
            assertThat(over.live()).isFalse();
        });
    }

    @Test
    void lists_people_in_one_order_whatever_the_order_in_which_they_were_told() {
        assertThat(FACTS.told()).containsExactly("ana", "ben");
        assertThat(FACTS.held().keySet()).containsExactly("ana", "ben");
    }
}
