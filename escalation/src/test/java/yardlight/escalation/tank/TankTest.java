package yardlight.escalation.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TankTest {

    static Stream<Tank> shapes() {
        return Stream.of(
                new Upright(12, 20),
                new Rectangular(30, 8, 8),
                new Lying(8, 20),
                new Strapping(
                        List.of(new Strapping.Row(1, 20), new Strapping.Row(10, 185), new Strapping.Row(20, 390))));
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void height_and_volume_undo_each_other_up_to_the_brim(Tank tank) {
        for (double height = 0; height <= tank.brim(); height += tank.brim() / 64) {
            assertThat(tank.height(tank.volume(height))).isCloseTo(height, within(1e-6));
        }
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void more_height_is_more_volume(Tank tank) {
        for (double height = 0; height < tank.brim(); height += tank.brim() / 64) {
            assertThat(tank.volume(height + tank.brim() / 64)).isGreaterThan(tank.volume(height));
        }
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void below_the_bottom_it_is_empty_and_above_the_brim_full(Tank tank) {
        assertThat(tank.volume(-0.1)).isZero();
        assertThat(tank.volume(0)).isCloseTo(0, within(1e-12));
        assertThat(tank.volume(tank.brim() + 1)).isEqualTo(tank.capacity());
        assertThat(tank.height(-1)).isCloseTo(0, within(1e-9));
        assertThat(tank.height(tank.capacity() * 2)).isCloseTo(tank.brim(), within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void what_is_not_a_number_is_refused(Tank tank) {
        assertThatIllegalArgumentException().isThrownBy(() -> tank.volume(Double.NaN));
    }

    @Test
    void a_lying_tank_is_half_full_at_half_its_diameter_and_fills_slowest_there() {
        var tank = new Lying(8, 20);

        assertThat(tank.capacity()).isCloseTo(Math.PI * 16 * 20, within(1e-9));
        assertThat(tank.volume(4)).isCloseTo(tank.capacity() / 2, within(1e-9));
        assertThat(tank.volume(4.1) - tank.volume(4)).isGreaterThan(tank.volume(0.2) - tank.volume(0.1));
    }

    /** A quarter of the diameter: 2 pi / 3 less the sine of it, of r squared over 2; worked out by hand. */
    @Test
    void a_lying_tank_holds_a_fifth_at_a_quarter_of_its_diameter() {
        assertThat(new Lying(4, 1).volume(1)).isCloseTo(2 * (2 * Math.PI / 3 - Math.sqrt(3) / 2), within(1e-9));
    }

    @Test
    void a_strapping_table_is_read_between_its_rows() {
        var tank = new Strapping(List.of(
                new Strapping.Row(0, 0),
                new Strapping.Row(1, 20),
                new Strapping.Row(10, 185),
                new Strapping.Row(20, 390)));

        assertThat(tank.volume(0.5)).isEqualTo(10);
        assertThat(tank.volume(1)).isEqualTo(20);
        assertThat(tank.volume(5.5)).isEqualTo(102.5);
        assertThat(tank.height(287.5)).isEqualTo(15);
        assertThat(tank.brim()).isEqualTo(20);
    }

    @Test
    void a_strapping_table_that_falls_or_has_nothing_in_it_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Strapping(List.of(new Strapping.Row(2, 20), new Strapping.Row(1, 30))))
                .withMessage("strapping must rise from row to row: 1.0");
        assertThatIllegalArgumentException().isThrownBy(() -> new Strapping(List.of(new Strapping.Row(0, 0))));
        assertThatIllegalArgumentException().isThrownBy(() -> new Strapping(List.of()));
    }

    @Test
    void a_tank_without_a_size_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Upright(0, 20))
                .withMessage("diameter must be above 0: 0.0");
        assertThatIllegalArgumentException().isThrownBy(() -> new Lying(8, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new Rectangular(1, -2, 3));
    }

    @Test
    void a_liquid_that_no_tank_holds_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Head(11))
                .withMessage("gravity must lie between 0.5 and 2.5: 11.0");
    }
}
