package yardlight.gateway.clock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SteadyClockTest {

    private static final Instant START = Instant.parse("2026-11-25T08:13:00Z");
    private static final Duration LOOK = Duration.ofMillis(100);

    private Instant wall = START;
    private long nanos = -5;
    private final List<String> said = new ArrayList<>();
    private final SteadyClock clock = new SteadyClock(() -> wall, () -> nanos);

    @BeforeEach
    void listen() {
        clock.listen(said::add);
    }

    @Test
    void is_the_time_of_day_and_follows_its_drift() {
        pass(LOOK);
        set(Duration.ofMillis(300));

        assertThat(clock.instant()).isEqualTo(wall);
        assertThat(clock.last()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"PT1M", "PT1H", "PT10H", "P3650D"})
    void goes_on_when_the_clock_is_set_back_and_no_wait_takes_twice_as_long(Duration step) {
        pass(LOOK);
        set(step.negated());
        Instant before = clock.instant();
        pass(Duration.ofMinutes(5));

        assertThat(before).isEqualTo(START.plus(LOOK));
        assertThat(Duration.between(before, clock.instant()))
                .isBetween(Duration.ofSeconds(150), Duration.ofSeconds(299));
        assertThat(clock.last()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"PT2S", "PT1M", "PT1H", "PT10H", "PT12H"})
    void agrees_with_a_clock_that_was_set_back_within_a_day_and_never_goes_back(Duration step) {
        set(step.negated());
        Instant told = clock.instant();
        for (long minute = 0; minute < SteadyClock.AGREED.toMinutes(); minute++) {
            assertThat(clock.instant()).isAfterOrEqualTo(told);
            told = clock.instant();
            pass(Duration.ofMinutes(1));
        }

        assertThat(clock.instant()).isEqualTo(wall);
        assertThat(said).last().isEqualTo("the gateway's clock agrees with the machine's again");
        pass(Duration.ofMinutes(5));
        assertThat(clock.instant()).isEqualTo(wall);
        assertThat(clock.last()).isEmpty();
    }

    @Test
    void says_each_step_once() {
        set(Duration.ofHours(-10).minusSeconds(5));
        pass(LOOK);
        pass(LOOK);
        set(Duration.ofHours(4));
        pass(LOOK);
        set(Duration.ofHours(7));
        pass(LOOK);

        assertThat(said)
                .containsExactly(
                        "the machine's clock was set back by 10 h 5 s; the gateway's is 10 h 5 s ahead of it, and goes"
                                + " slower until they agree",
                        "the machine's clock was set forward by 4 h; the gateway's is 6 h 4 s ahead of it now",
                        "the machine's clock was set forward by 7 h, or the machine slept so long; the gateway's"
                                + " follows it");
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
