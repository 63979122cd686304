package yardlight.channels.smpp;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;

class IdentitiesTest {

    private static final Instant NOW = Instant.parse("2026-11-25T09:13:00Z");
    private static final Object SESSION = "one";
    private static final Object NEXT_SESSION = "two";

    private final Identities identities = new Identities();

    @Test
    void are_the_same_while_it_was_not_taken() {
        String first = identities.of("OK", SESSION, NOW);

        assertThat(identities.of("OK", SESSION, NOW.plusSeconds(60))).isEqualTo(first);
        assertThat(identities.of("OK", NEXT_SESSION, NOW.plusSeconds(6_000))).isEqualTo(first);
    }

    @Test
    void are_new_for_who_writes_the_same_again() {
        String first = identities.of("OK", SESSION, NOW);
        identities.taken("OK", SESSION, NOW);

        assertThat(identities.of("OK", SESSION, NOW)).isNotEqualTo(first);
    }

    @Test
    void are_the_same_when_the_session_ended_right_after_it_was_taken() {
        String first = identities.of("OK", SESSION, NOW);
        identities.taken("OK", SESSION, NOW);

        assertThat(identities.of("OK", NEXT_SESSION, NOW.plusSeconds(5))).isEqualTo(first);
    }

    @Test
    void are_new_when_it_was_taken_long_before_the_session_ended() {
        String first = identities.of("OK", SESSION, NOW);
        identities.taken("OK", SESSION, NOW);

        assertThat(identities.of("OK", NEXT_SESSION, NOW.plus(Identities.DOUBT).plusSeconds(1)))
                .isNotEqualTo(first);
    }

    @Test
    void differ_by_what_is_said() {
        assertThat(identities.of("OK", SESSION, NOW)).isNotEqualTo(identities.of("NO", SESSION, NOW));
    }
}
