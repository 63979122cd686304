package yardlight.gateway.clock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SteadyClockTest {

    private static final Instant START = Instant.parse("2026-11-25T08:13:00Z");
    private static final Duration LOOK = Duration.ofMillis(100);

    private Instant wall = START;
    private long nanos = -5;
    private final SteadyClock clock = new SteadyClock(() -> wall, () -> nanos);

    @Test
    void is_the_time_of_day_and_follows_its_drift() {
        pass(LOOK);
        set(Duration.ofMillis(300));

        assertThat(clock.instant()).isEqualTo(wall);
        assertThat(clock.last()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"PT1M", "PT1H", "PT10H"})
    void goes_on_as_if_nobody_had_set_the_clock_back(Duration step) {
        pass(LOOK);
        set(step.negated());
        pass(Duration.ofMinutes(5));

        assertThat(clock.instant()).isEqualTo(START.plus(LOOK).plus(Duration.ofMinutes(5)));
        assertThat(clock.last()).isEmpty();
    }

    @Test
    void stands_still_for_less_than_a_second_rather_than_go_back() {
        pass(LOOK);
        set(Duration.ofMillis(-900));

        assertThat(clock.instant()).isEqualTo(START.plus(LOOK));

        pass(Duration.ofSeconds(1));
        assertThat(clock.instant()).isEqualTo(wall);
    }

    @ParameterizedTest
    @ValueSource(strings = {"PT1M", "PT1H", "PT10H"})
    void follows_a_step_forward_and_tells_when(Duration step) {
        pass(LOOK);
        set(step);

        assertThat(clock.instant()).isEqualTo(wall);
        assertThat(clock.last()).contains(wall);
    }

    @Test
    void makes_up_for_a_step_back_with_a_step_forward() {
        set(Duration.ofHours(-10));
        clock.instant();
        set(Duration.ofHours(4));
        assertThat(clock.instant()).isEqualTo(START);
        assertThat(clock.last()).isEmpty();

        set(Duration.ofHours(7));
        assertThat(clock.instant()).isEqualTo(wall).isEqualTo(START.plus(Duration.ofHours(1)));
        assertThat(clock.last()).contains(wall);
    }

    @Test
    void does_not_take_being_held_up_between_two_looks_for_a_step() {
        var held = new SteadyClock(this::wallAfterAPause, () -> nanos);
        pausing = true;

        held.instant();

        assertThat(held.instant()).isEqualTo(wall);
        assertThat(held.last()).isEmpty();
    }

    private boolean pausing;

    private Instant wallAfterAPause() {
        if (pausing) {
            pausing = false;
            nanos += Duration.ofSeconds(3).toNanos();
            wall = wall.plusSeconds(3);
        }
        return wall;
    }

    private void pass(Duration time) {
        nanos += time.toNanos();
        set(time);
        clock.instant();
    }

    private void set(Duration step) {
        wall = wall.plus(step);
    }
}
