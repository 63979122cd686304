package yardlight.gateway.incoming;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;

class TurnsTest {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");

    private final Turns turns = new Turns();

    @Test
    void end_for_who_is_answered_again_and_again_and_for_nobody_else() {
        for (int i = 0; i < Turns.MOST; i++) {
            assertThat(turns.take("mail/ana@ranch.example", NOW)).isTrue();
        }

        assertThat(turns.take("mail/ana@ranch.example", NOW)).isFalse();
        assertThat(turns.take("mail/ben@ranch.example", NOW)).isTrue();
    }

    @Test
    void begin_anew_after_a_while() {
        for (int i = 0; i < Turns.MOST; i++) {
            turns.take("mail/ana@ranch.example", NOW);
        }

        assertThat(turns.take("mail/ana@ranch.example", NOW.plus(Turns.WITHIN))).isFalse();
        assertThat(turns.take("mail/ana@ranch.example", NOW.plus(Turns.WITHIN).plusMillis(1)))
                .isTrue();
    }
}
