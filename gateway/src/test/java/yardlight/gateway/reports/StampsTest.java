package yardlight.gateway.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.escalation.Fixtures;

class StampsTest {

    private static final Stamps AT_THE_SITE = new Stamps(Fixtures.CHICAGO, Locale.ENGLISH);

    @Test
    void tell_the_two_hours_of_an_autumn_night_apart() {
        Instant first = Instant.parse("2026-11-01T06:30:00Z");

        assertThat(AT_THE_SITE.local(first)).isEqualTo("Nov 1, 2026, 1:30:00 AM CDT");
        assertThat(AT_THE_SITE.local(first.plusSeconds(3600))).isEqualTo("Nov 1, 2026, 1:30:00 AM CST");
        assertThat(Stamps.utc(first)).isEqualTo("2026-11-01 06:30:00Z");
    }

    @ParameterizedTest
    @CsvSource({
        "PT0S, 0 s",
        "PT59.9S, 59 s",
        "PT4M12S, 4 min 12 s",
        "PT1H3S, 1 h 0 min 3 s",
        "P1DT2H, 1 d 2 h 0 min 0 s",
        "PT-5S, -5 s"
    })
    void say_how_long_it_took(Duration length, String words) {
        assertThat(Stamps.length(length)).isEqualTo(words);
    }
}
