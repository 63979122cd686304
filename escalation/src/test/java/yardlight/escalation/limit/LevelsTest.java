package yardlight.escalation.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LevelsTest {

    private static final Rules FOUR = Rules.of(new Limits(
            Optional.of(new BigDecimal("18.0")),
            Optional.of(new BigDecimal("16")),
            Optional.of(new BigDecimal("2")),
            Optional.of(new BigDecimal("1")),
            new BigDecimal("0.5")));

    /** The deadband rule of OPC UA Part 9, B.1.5, traced for a limit of 18.0 ft with 5 % of 20 ft. */
    @Test
    void a_deadband_holds_until_the_value_is_below_it() {
        var tank = new Watched(Rules.of(Watched.high("18.0", "1.0")));

        tank.minutes(0, 17.9);
        assertThat(tank.turned()).isEmpty();
        tank.minutes(1, 18.1, 17.6, 17.1, 17.0);
        assertThat(tank.turned()).containsExactly("+high");
        tank.minutes(5, 16.9);
        assertThat(tank.turned()).containsExactly("+high", "-high");
    }

    /** The same rule without a deadband: two activations. */
    @Test
    void without_a_deadband_each_crossing_counts() {
        var tank = new Watched(Rules.of(Watched.high("18.0", "0")));

        tank.minutes(0, 17.9, 18.1, 17.6, 18.2);

        assertThat(tank.turned()).containsExactly("+high", "-high", "+high");
    }

    @Test
    void a_low_limit_is_the_mirror_image() {
        var tank = new Watched(FOUR);

        tank.minutes(0, 2.0, 1.9, 2.5, 2.6);

        assertThat(tank.turned()).containsExactly("+low", "-low");
    }

    @Test
    void a_value_at_the_limit_has_not_passed_it() {
        var tank = new Watched(FOUR);

        tank.minutes(0, 16.0, 2.0);

        assertThat(tank.turned()).isEmpty();
    }

    @Test
    void what_is_worse_is_found_first() {
        var tank = new Watched(FOUR);

        tank.minutes(0, 10, 18.4, 10, 0.5);

        assertThat(tank.turned()).containsExactly("+high-high", "+high", "-high-high", "-high", "+low-low", "+low");
    }

    @Test
    void the_value_is_shown_beside_the_limit() {
        var tank = new Watched(FOUR);

        tank.minutes(0, 18.432199999999998, 18.000004);

        assertThat(tank.findings().get(0).value()).contains(new BigDecimal("18.432"));
        assertThat(tank.findings().get(0).limit()).contains(new BigDecimal("18.0"));
        assertThat(tank.findings().get(2).value()).contains(new BigDecimal("18.000004"));
        assertThat(tank.findings().get(2).turned()).isFalse();
    }

    @Test
    void a_late_reading_changes_nothing_but_the_series() {
        var tank = new Watched(FOUR);

        tank.minutes(0, 10, 10).minutes(1, 18.4).minutes(0, 18.4);
        tank.read(Duration.ofSeconds(-90), 19);

        assertThat(tank.turned()).isEmpty();
        assertThat(tank.gauge().recent().values()).containsExactly(19, 10, 10);
    }

    @Test
    void limits_rise() {
        assertThatThrownBy(() -> new Limits(
                        Optional.of(new BigDecimal("16")),
                        Optional.of(new BigDecimal("16.0")),
                        Optional.empty(),
                        Optional.empty(),
                        BigDecimal.ZERO))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("limits must rise from lowLow over low and high to highHigh: 16.0, 16");
        assertThatThrownBy(() -> Watched.high("16", "-1"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("deadband must not be negative: -1");
    }
}
