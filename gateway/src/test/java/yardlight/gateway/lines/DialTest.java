package yardlight.gateway.lines;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.quiet.QuietHours;

/** A clock with the whole day on its face. */
class DialTest {

    @Test
    void has_noon_above_and_six_in_the_morning_at_the_left() {
        assertThat(dial("12:00").handX()).isEqualTo(120);
        assertThat(dial("12:00").handY()).isEqualTo(58);
        assertThat(dial("06:00").handX()).isEqualTo(58);
        assertThat(dial("18:00").handX()).isEqualTo(182);
        assertThat(dial("00:00").handY()).isEqualTo(182);
    }

    @Test
    void draws_the_night_over_midnight_below_the_short_way() {
        assertThat(dial("12:00", hours("18:00", "06:00")).arcs())
                .containsExactly("M194.0 120.0 A74 74 0 0 1 46.0 120.0");
    }

    @Test
    void draws_more_than_half_a_day_the_long_way() {
        assertThat(dial("12:00", hours("06:00", "00:00")).arcs())
                .containsExactly("M46.0 120.0 A74 74 0 1 1 120.0 194.0");
    }

    @Test
    void gives_each_stretch_a_ring_of_its_own() {
        List<String> arcs =
                dial("12:00", hours("18:00", "06:00"), hours("12:00", "18:00")).arcs();

        assertThat(arcs.get(1)).isEqualTo("M120.0 61.0 A59 59 0 0 1 179.0 120.0");
    }

    private static Dial dial(String now, QuietHours... quiet) {
        return Dial.of(List.of(quiet), LocalTime.parse(now));
    }

    private static QuietHours hours(String from, String to) {
        return QuietHours.daily(LocalTime.parse(from), LocalTime.parse(to), ZoneOffset.UTC, Priority.HIGH);
    }
}
