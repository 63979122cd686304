package yardlight.db.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SlotTest {

    private static final Instant LAST = Instant.parse("2159-05-15T07:35:11.103Z");

    @Test
    void holds_series_and_moment_and_orders_by_them() {
        var random = new Random(1);
        for (int i = 0; i < 10_000; i++) {
            int series = random.nextInt(Slot.MOST_SERIES + 1);
            Instant at = Slot.FIRST.plusMillis(random.nextLong(1L << 42));

            assertThat(Slot.at(Slot.of(series, at))).isEqualTo(at);
            assertThat(Slot.of(series, at)).isNotNegative();
            assertThat(Slot.day(Slot.ofDay(series, Slot.day(at)))).isEqualTo(Slot.day(at));
            assertThat(Slot.startOf(Slot.day(at))).isBeforeOrEqualTo(at).isAfter(at.minusSeconds(86_400));
            if (series < Slot.MOST_SERIES) {
                assertThat(Slot.of(series + 1, Slot.FIRST)).isGreaterThan(Slot.of(series, at));
            }
        }
    }

    @Test
    void reaches_to_the_end_of_its_bits() {
        assertThat(Slot.at(Slot.of(Slot.MOST_SERIES, LAST))).isEqualTo(LAST);
        assertThatThrownBy(() -> Slot.of(1, LAST.plusMillis(1))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Slot.of(Slot.MOST_SERIES + 1, LAST)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Slot.of(1, Slot.FIRST.minusMillis(1))).isInstanceOf(IllegalArgumentException.class);
    }
}
