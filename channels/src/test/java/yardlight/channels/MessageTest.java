package yardlight.channels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MessageTest {

    @ParameterizedTest
    @ValueSource(strings = {"", "with space", "line\nend", "\u00e1"})
    void refuses_an_id_that_is_not_printable_ascii(String id) {
        assertThatThrownBy(() -> new Message(id, "ana@example.org", "text", Instant.EPOCH))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("message id must be");
    }

    @Test
    void takes_an_id_of_300_characters_and_not_of_301() {
        assertThat(new Message("i".repeat(300), "ana@example.org", "text", Instant.EPOCH).id())
                .hasSize(300);
        assertThatThrownBy(() -> new Message("i".repeat(301), "ana@example.org", "text", Instant.EPOCH))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
