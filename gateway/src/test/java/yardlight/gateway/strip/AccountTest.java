package yardlight.gateway.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardlight.db.reading.Sample;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.page.Tongues;

class AccountTest {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");
    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

    private static Account of(List<Sample> samples, Tongue tongue) {
        return new Account("WATER TANK", "ft", samples, new Clockface(CHICAGO, NOW, tongue.locale()), tongue);
    }

    private static List<Sample> hours(int count) {
        return IntStream.range(0, count * 6)
                .mapToObj(i -> new Sample(NOW.minusSeconds(600L * (count * 6 - i)), 10 + i, 12 + i, 11 + i, 10))
                .toList();
    }

    @Test
    void says_the_last_the_lowest_and_the_highest_with_their_times() {
        Account account = of(
                List.of(
                        Sample.one(Instant.parse("2026-11-25T07:13:00Z"), 14.0625),
                        Sample.one(Instant.parse("2026-11-25T08:05:00Z"), 18.625),
                        Sample.one(NOW, 18.4)),
                Tongues.ENGLISH);

        assertThat(account.sentence())
                .isEqualTo("WATER TANK: last 18.4 ft, 2:13 AM; lowest 14.06 ft, 1:13 AM; highest 18.63 ft, 2:05 AM.");
        assertThat(of(account.samples(), Tongues.SPANISH).sentence())
                .isEqualTo("WATER TANK: última 18.4 ft, 2:13; mínima 14.06 ft, 1:13; máxima 18.63 ft, 2:05.");
        assertThat(of(List.of(), Tongues.ENGLISH).sentence()).isEqualTo("WATER TANK: nothing was read in this time.");
    }

    @Test
    void has_a_row_for_each_hour_of_a_day_newest_first() {
        List<Account.Row> rows = of(hours(24), Tongues.ENGLISH).rows();

        assertThat(rows).hasSize(25);
        assertThat(rows.get(0).time()).isEqualTo("2:00 AM");
        assertThat(rows.get(1)).isEqualTo(new Account.Row("1:00 AM", "150.5", "147", "154"));
    }

    @Test
    void has_no_endless_table_for_400_days() {
        assertThat(of(hours(400 * 24), Tongues.ENGLISH).rows()).hasSizeBetween(10, 33);
        assertThat(of(List.of(Sample.one(NOW, 3)), Tongues.ENGLISH).rows()).hasSize(1);
    }

    @Test
    void figures_have_four_digits_and_their_thousands() {
        assertThat(List.of(18.4, 1520.0, 0.03125, 0.0, -7.12345, 123456.7).stream()
                        .map(Rounded::of))
                .containsExactly("18.4", "1520", "0.03125", "0", "-7.123", "123457");
        assertThat(String.format(Locale.ROOT, "%s", Rounded.of(2, ""))).isEqualTo("2");
    }
}
