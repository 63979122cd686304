package yardlight.escalation.swap;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.swap.OfferState.DECLINED;
import static yardlight.escalation.swap.OfferState.EXPIRED;
import static yardlight.escalation.swap.OfferState.OPEN;
import static yardlight.escalation.swap.OfferState.TAKEN;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class OfferTransitionsTest {

    private static final Instant NOW = Instant.parse("2026-11-25T18:00:00Z");
    private static final Instant LATE = NOW.plusSeconds(3600);

    private final Offer offer = Offer.made(
            "crew.swap.1",
            31,
            "crew",
            "ana",
            new Part(LocalDateTime.parse("2026-11-27T07:00"), LocalDateTime.parse("2026-11-28T07:00")),
            List.of("ben", "carl"),
            NOW,
            LATE);

    @Test
    void the_first_yes_in_time_has_it() {
        Offer taken = offer.after(OfferTrigger.TAKE, "ben", NOW).orElseThrow();

        assertThat(taken.state()).isEqualTo(TAKEN);
        assertThat(taken.taker()).contains("ben");
        assertThat(taken.after(OfferTrigger.TAKE, "carl", NOW)).isEmpty();
        assertThat(offer.after(OfferTrigger.TAKE, "ben", LATE)).isEmpty();
    }

    @Test
    void it_is_declined_once_everybody_said_no_and_who_thinks_again_may_still_take_it() {
        Offer one = offer.after(OfferTrigger.DECLINE, "ben", NOW).orElseThrow();
        Offer all = one.after(OfferTrigger.DECLINE, "carl", NOW).orElseThrow();

        assertThat(one.state()).isEqualTo(OPEN);
        assertThat(all.state()).isEqualTo(DECLINED);
        assertThat(all.after(OfferTrigger.TAKE, "ben", NOW)).map(Offer::state).contains(TAKEN);
        assertThat(all.after(OfferTrigger.DECLINE, "ben", NOW)).isEmpty();
    }

    @Test
    void its_time_is_up_only_when_it_is() {
        assertThat(offer.dueAt()).contains(LATE);
        assertThat(offer.after(OfferTrigger.TIME, "", NOW)).isEmpty();
        assertThat(offer.after(OfferTrigger.TIME, "", LATE)).map(Offer::state).contains(EXPIRED);
    }

    @ParameterizedTest
    @EnumSource(OfferTrigger.class)
    void nothing_comes_of_anything_once_it_is_over(OfferTrigger trigger) {
        for (OfferState over : EnumSet.complementOf(EnumSet.of(OPEN, DECLINED))) {
            Offer ended = new Offer(
                    offer.id(),
                    31,
                    "crew",
                    "ana",
                    offer.from(),
                    offer.to(),
                    offer.asked(),
                    Set.of(),
                    over,
                    offer.taker(),
                    NOW,
                    LATE);

            assertThat(ended.after(trigger, "ben", NOW)).as(over.word()).isEmpty();
            assertThat(ended.dueAt()).isEmpty();
        }
    }

    @Test
    void what_has_begun_is_left_from_the_next_full_minute_on() {
        assertThat(offer.left(LocalDateTime.parse("2026-11-27T06:59:10")).from())
                .isEqualTo("2026-11-27T07:00");
        assertThat(offer.left(LocalDateTime.parse("2026-11-27T22:10:00.5")).from())
                .isEqualTo("2026-11-27T22:11");
        assertThat(offer.left(LocalDateTime.parse("2026-11-27T22:10")).from()).isEqualTo("2026-11-27T22:10");
    }
}
