package yardlight.channels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.channels.Attempt.Outcome;

class AttemptTest {

    @Test
    void makes_one_line_of_the_detail() {
        assertThat(Attempt.refused("550 no\r\n\tsuch\u2028user\u0000\u001b[0m ").detail())
                .isEqualTo("550 no such user [0m");
    }

    @Test
    void drops_marks_that_turn_the_writing_direction() {
        assertThat(Attempt.refused("ab\u202ecd\u200f").detail()).isEqualTo("abcd");
    }

    @Test
    void keeps_a_detail_of_300_characters_and_cuts_a_longer_one_to_300() {
        assertThat(Attempt.refused("a".repeat(300)).detail()).isEqualTo("a".repeat(300));
        assertThat(Attempt.refused("a".repeat(301)).detail()).isEqualTo("a".repeat(299) + "…");
    }

    @Test
    void does_not_cut_a_character_in_two() {
        String detail =
                Attempt.refused("a".repeat(298) + "\ud83d\udca7\ud83d\udca7").detail();

        assertThat(detail).isEqualTo("a".repeat(298) + "…");
    }

    @Test
    void waits_only_when_deferred() {
        assertThat(Attempt.deferred("busy", Duration.ofMinutes(2)).retryAfter()).contains(Duration.ofMinutes(2));
        assertThatThrownBy(() ->
                        new Attempt(Outcome.REFUSED, "no", false, Optional.of(Duration.ofMinutes(2)), Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void names_its_outcomes_as_the_log_does() {
        assertThat(Outcome.values())
                .extracting(Outcome::word)
                .containsExactly("accepted", "refused", "deferred", "unknown");
    }

    @Test
    void is_between_us_and_the_carrier_only_while_it_is_not_settled() {
        assertThat(Attempt.deferred("cannot be reached").general()).isFalse();
        assertThat(Attempt.deferred("cannot be reached").forEveryMessage().general())
                .isTrue();
        assertThatThrownBy(() -> Attempt.refused("no").forEveryMessage()).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void has_a_reference_only_when_it_was_accepted() {
        assertThat(Attempt.accepted("fine", "7f3a").reference()).contains("7f3a");
        assertThatThrownBy(() -> new Attempt(Outcome.UNKNOWN, "cut", true, Optional.empty(), Optional.of("7f3a")))
                .hasMessageContaining("UNKNOWN");
    }
}
