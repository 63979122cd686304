package yardlight.gateway.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

class RoundTimesTest {

    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

    @Test
    void stand_at_round_times_of_the_local_clock() {
        Instant from = Instant.parse("2026-11-25T07:13:00Z");

        List<Instant> marks = RoundTimes.between(from, from.plus(Duration.ofHours(1)), CHICAGO, 5);

        assertThat(local(marks)).containsExactly("01:15", "01:30", "01:45", "02:00");
    }

    @Test
    void stand_at_midnights_where_days_are_meant() {
        Instant from = Instant.parse("2026-11-20T07:13:00Z");

        List<Instant> marks = RoundTimes.between(from, from.plus(Duration.ofDays(5)), CHICAGO, 7);

        assertThat(local(marks)).hasSize(5).containsOnly("00:00");
    }

    /** America/Chicago, IANA: 2026-11-01 02:00 goes back to 01:00; 2026-03-08 02:00 goes on to 03:00. */
    @Test
    void stay_round_in_the_nights_in_which_the_clock_is_changed() {
        Instant back = Instant.parse("2026-11-01T05:00:00Z");
        Instant forward = Instant.parse("2026-03-08T06:00:00Z");

        assertThat(local(RoundTimes.every(360, back, back.plus(Duration.ofHours(25)), CHICAGO)))
                .containsExactly("00:00", "06:00", "12:00", "18:00", "00:00");
        assertThat(local(RoundTimes.every(60, forward, forward.plus(Duration.ofHours(4)), CHICAGO)))
                .containsExactly("00:00", "01:00", "03:00", "04:00", "05:00");
    }

    @Test
    void are_never_more_than_wanted() {
        Instant from = Instant.parse("2025-10-20T07:13:00Z");

        for (long minutes = 2; minutes <= Duration.ofDays(400).toMinutes(); minutes = minutes * 4 / 3 + 1) {
            assertThat(RoundTimes.between(from, from.plus(Duration.ofMinutes(minutes)), CHICAGO, 6))
                    .as(minutes + " minutes")
                    .hasSizeBetween(1, 6);
        }
    }

    private static List<String> local(List<Instant> marks) {
        return marks.stream()
                .map(at -> at.atZone(CHICAGO).toLocalTime().toString())
                .toList();
    }
}
