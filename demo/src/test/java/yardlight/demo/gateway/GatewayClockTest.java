package yardlight.demo.gateway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.api.Test;

class GatewayClockTest {

    private static final Instant TWO_AM = Instant.parse("2026-11-25T08:00:00Z");

    private final GatewayClock clock = new GatewayClock();

    @Test
    void goes_on_from_the_last_answer_at_the_gateways_speed() {
        long now = System.nanoTime();

        clock.set(beat(TWO_AM, now - 2_000_000_000L), beat(TWO_AM.plusSeconds(60), now - 1_000_000_000L), 60);

        assertThat(clock.instant()).isCloseTo(TWO_AM.plusSeconds(120), within(30, ChronoUnit.SECONDS));
        assertThat(clock.real(Duration.ofMinutes(5))).isEqualTo(Duration.ofSeconds(5));
    }

    @Test
    void does_not_wait_for_what_has_passed() throws InterruptedException {
        clock.set(beat(TWO_AM, 0), beat(TWO_AM.plusSeconds(60), 1_000_000_000L), 60);

        clock.awaitInstant(TWO_AM);

        assertThat(clock.instant()).isAfter(TWO_AM);
    }

    @Test
    void refuses_a_gateway_that_runs_at_another_speed() {
        assertThatThrownBy(() -> clock.set(beat(TWO_AM, 0), beat(TWO_AM.plusSeconds(1), 1_000_000_000L), 48))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("the gateway's clock runs at 1.0 times, not at 48.0");
        assertThat(clock.isSet()).isFalse();
    }

    @Test
    void cannot_be_asked_before_it_is_set() {
        assertThatThrownBy(clock::instant).isInstanceOf(IllegalStateException.class);
    }

    private static BoxDoor.Beat beat(Instant received, long nanos) {
        return new BoxDoor.Beat(received, nanos);
    }
}
