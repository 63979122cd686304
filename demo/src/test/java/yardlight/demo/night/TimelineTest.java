package yardlight.demo.night;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class TimelineTest {

    private final ByteArrayOutputStream printed = new ByteArrayOutputStream();
    private final Timeline timeline =
            new Timeline(ZoneId.of("America/Chicago"), new PrintStream(printed, true, StandardCharsets.UTF_8));

    @Test
    void prints_each_line_as_it_happens_with_the_local_time_of_the_sites() {
        timeline.add(Instant.parse("2026-11-25T08:13:00Z"), "Mesa 9", "water tank at 18.4 ft, limit 18.0");
        timeline.add(Instant.parse("2026-11-25T18:05:00Z"), "Ana's phone", "noon");

        assertThat(printed.toString(StandardCharsets.UTF_8).lines())
                .containsExactly(
                        " 2:13 AM  Mesa 9                   water tank at 18.4 ft, limit 18.0",
                        "12:05 PM  Ana's phone              noon");
    }

    @Test
    void remembers_that_a_visitor_took_a_hand_in_it() {
        timeline.add(Instant.parse("2026-11-25T08:13:00Z"), "Mesa 9", "water tank at 18.4 ft");
        assertThat(timeline.handled()).isFalse();

        timeline.addByHand(Instant.parse("2026-11-25T08:14:00Z"), "Mesa 9", "link broken");

        assertThat(timeline.handled()).isTrue();
        assertThat(timeline.lines().get(1).what()).isEqualTo("link broken (by hand)");
    }
}
