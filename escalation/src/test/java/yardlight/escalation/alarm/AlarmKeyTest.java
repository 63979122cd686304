package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AlarmKeyTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "-a",
                "A",
                "a_b",
                "a b",
                "a/b",
                "ä",
                "12345678901234567890123456789012345678901234567890123456789012345"
            })
    void refuses_an_id_that_the_contract_does_not_allow(String id) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AlarmKey("mesa-9", id, "high"))
                .withMessage("point must match [a-z0-9][a-z0-9-]{0,63}: " + id);
    }

    @Test
    void holds_all_three_parts_to_the_same_rule() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AlarmKey("", "water-tank", "high"))
                .withMessageStartingWith("site must match");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AlarmKey("mesa-9", "water-tank", "High"))
                .withMessageStartingWith("condition must match");
    }

    @Test
    void takes_an_id_of_64_characters() {
        String longest = "a".repeat(64);

        assertThat(new AlarmKey("mesa-9", longest, "9").local()).isEqualTo(longest + "/9");
    }

    @Test
    void sorts_by_site_then_point_then_condition() {
        var a = new AlarmKey("a", "z", "z");
        var b = new AlarmKey("b", "a", "z");
        var c = new AlarmKey("b", "b", "a");

        assertThat(Stream.of(c, b, a).sorted()).containsExactly(a, b, c);
    }
}
