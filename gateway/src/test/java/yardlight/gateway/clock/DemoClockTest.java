package yardlight.gateway.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class DemoClockTest {

    private static final Instant START = Instant.parse("2026-11-25T08:13:00Z");

    private final AtomicLong nanos = new AtomicLong(-5);

    @Test
    void starts_where_it_is_told_and_runs_as_fast_as_it_is_told() {
        var clock = new DemoClock(START, 60, nanos::get);

        assertThat(clock.instant()).isEqualTo(START);
        nanos.addAndGet(Duration.ofSeconds(2).toNanos());
        assertThat(clock.instant()).isEqualTo(START.plus(Duration.ofMinutes(2)));
    }

    @Test
    void says_how_long_its_minutes_take() {
        assertThat(new DemoClock(START, 60, nanos::get).real(Duration.ofMinutes(5)))
                .isEqualTo(Duration.ofSeconds(5));
    }

    @Test
    void is_asked_for_by_a_speed_or_a_start_only() {
        assertThat(new ClockSettings(1, Optional.empty()).real()).isTrue();
        assertThat(new ClockSettings(2, Optional.empty()).real()).isFalse();
        assertThat(new ClockSettings(1, Optional.of(START)).real()).isFalse();
        assertThatThrownBy(() -> new ClockSettings(0, Optional.empty())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ClockSettings(Double.NaN, Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
