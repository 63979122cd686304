package yardlight.gateway.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.gateway.sentence.Locales;

class ClockfaceTest {

    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");

    @Test
    void reads_the_time_of_the_place_today() {
        assertThat(new Clockface(CHICAGO, NOW, Locale.ENGLISH).read(NOW)).isEqualTo("2:13 AM");
        assertThat(new Clockface(CHICAGO, NOW, Locales.SPANISH).read(NOW)).isEqualTo("2:13");
    }

    @Test
    void reads_to_the_second_when_asked() {
        assertThat(new Clockface(CHICAGO, NOW, Locale.ENGLISH).exact(NOW.plusSeconds(7)))
                .isEqualTo("2:13:07 AM");
        assertThat(new Clockface(CHICAGO, NOW, Locales.SPANISH).exact(NOW.plusSeconds(7)))
                .isEqualTo("2:13:07");
    }

    @Test
    void names_the_day_when_it_is_another_one_there() {
        Instant evening = Instant.parse("2026-11-25T05:59:00Z");

        assertThat(new Clockface(CHICAGO, NOW, Locale.ENGLISH).read(evening)).isEqualTo("Nov 24, 11:59 PM");
    }

    @Test
    void names_the_day_of_the_week_and_the_year_only_of_another_year() {
        var clock = new Clockface(CHICAGO, NOW, Locale.ENGLISH);

        assertThat(clock.readWithDay(NOW)).isEqualTo("Wed, Nov 25, 2:13 AM");
        assertThat(clock.readWithDay(Instant.parse("2027-01-01T13:00:00Z"))).isEqualTo("Fri, Jan 1, 2027, 7:00 AM");
        assertThat(clock.read(LocalDate.of(2027, 1, 1))).isEqualTo("Jan 1, 2027");
        assertThat(clock.readInWeek(LocalDate.of(2027, 1, 1))).isEqualTo("Fri, Jan 1");
        assertThat(clock.read(LocalTime.of(21, 0))).isEqualTo("9:00 PM");
        assertThat(new Clockface(CHICAGO, NOW, Locales.SPANISH).read(LocalTime.of(6, 0)))
                .isEqualTo("6:00");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0 s",
        "119, 119 s",
        "120, 2 min",
        "7199, 119 min",
        "7200, 2 h",
        "172799, 47 h",
        "172800, 2 days",
        "-5, 0 s"
    })
    void tells_how_long_ago_something_was(long seconds, String words) {
        assertThat(Clockface.ago(NOW.minusSeconds(seconds), NOW)).isEqualTo(words);
    }
}
