package yardlight.escalation.performance;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.escalation.Fixtures;

class BurdenTest {

    private static int wakings(String... local) {
        List<Instant> texts = Stream.of(local).map(Fixtures::at).toList();
        return Burden.wakings(texts, Fixtures.CHICAGO);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-25T21:59:59, false",
        "2026-11-25T22:00, true",
        "2026-11-26T05:59:59, true",
        "2026-11-26T06:00, false"
    })
    void the_night_begins_at_ten_and_ends_at_six_at_the_person_s_place(String local, boolean night) {
        assertThat(Burden.night(Fixtures.at(local), Fixtures.CHICAGO)).isEqualTo(night);
    }

    @Test
    void whoever_was_woken_is_awake_for_half_an_hour_after_each_text() {
        assertThat(wakings("2026-11-25T02:13", "2026-11-25T02:43", "2026-11-25T03:13"))
                .isEqualTo(1);
        assertThat(wakings("2026-11-25T02:13", "2026-11-25T02:43:01")).isEqualTo(2);
    }

    @Test
    void texts_of_the_day_wake_nobody_and_do_not_keep_awake() {
        assertThat(wakings("2026-11-25T12:00", "2026-11-25T21:50", "2026-11-25T22:05"))
                .isEqualTo(1);
        assertThat(wakings()).isZero();
    }

    /** From 1 to 2 comes twice: 1:10 by both clocks is an hour apart. */
    @Test
    void the_hour_that_comes_twice_is_two_hours() {
        Instant first = Instant.parse("2026-11-01T06:10:00Z");

        assertThat(Burden.wakings(List.of(first, first.plusSeconds(3600)), Fixtures.CHICAGO))
                .isEqualTo(2);
    }
}
