package yardlight.demo.lease;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TankTest {

    /** Geometry, 9,702 cubic inches to the barrel (NIST Handbook 44, appendix C; recomputed). */
    @Test
    void a_tank_of_12_ft_across_holds_20_143_barrels_a_foot() {
        assertThat(new Tank(12, 20, 0).perFoot()).isCloseTo(20.143, within(0.001));
    }

    @Test
    void what_does_not_fit_runs_over() {
        var tank = new Tank(12, 20, 19.5);

        double over = tank.fill(20.143);

        assertThat(tank.level()).isCloseTo(20, within(1e-9));
        assertThat(over).isCloseTo(20.143 / 2, within(0.001));
    }

    @Test
    void nothing_is_drawn_from_below_the_suction() {
        var tank = new Tank(12, 20, 0.75);

        assertThat(tank.draw(20.143, 0.5)).isCloseTo(20.143 / 4, within(0.001));
        assertThat(tank.draw(20.143, 0.5)).isZero();
        assertThat(tank.draw(20.143, 0.9)).isZero();
    }
}
