package yardlight.escalation.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tanks, barrels and heads against published figures. */
class TankAgainstTest {

    /**
     * API Spec 12B, bolted tanks: inside diameter and shell height in inches, calculated capacity in barrels. The table was read
     * at second hand, in a piping reference; all 14 rows were recomputed.
     */
    @ParameterizedTest
    @CsvSource({
        "110.75, 96.5, 96",
        "110.75, 193, 192",
        "110.75, 289.5, 287",
        "184.625, 96.5, 266",
        "184.625, 193, 533",
        "184.625, 289.5, 799",
        "258.5, 96.5, 522",
        "258.5, 193, 1044",
        "258.5, 289.5, 1566",
        "356.625, 96.5, 994",
        "356.625, 193, 1987",
        "356.625, 289.5, 2981",
        "463.625, 289.5, 5037",
        "659.75, 290, 10218"
    })
    void a_bolted_tank_holds_what_the_standard_says_within_a_barrel(double diameter, double height, double barrels) {
        double capacity = Barrels.ofCubicInches(new Upright(diameter, height).capacity());

        assertThat(capacity).isCloseTo(barrels, within(1.0));
    }

    /** NIST Handbook 44 appendix C, read: 1 bbl = 42 gal, 1 gal = 231 cubic inches; 5.614583 cubic feet, recomputed. */
    @Test
    void a_barrel_is_9702_cubic_inches() {
        assertThat(Barrels.CUBIC_INCHES).isEqualTo(9702);
        assertThat(Barrels.ofCubicFeet(5.614583)).isCloseTo(1, within(1e-6));
    }

    /** Plain geometry, no source needed: 0.0116571 times the square of the diameter in feet; recomputed. */
    @ParameterizedTest
    @CsvSource({"10, 1.1657", "11, 1.4105", "12, 1.6786", "15.5, 2.8006", "21.541667, 5.4094"})
    void an_inch_of_an_upright_tank_holds_the_usual_barrels(double feet, double barrels) {
        var tank = new Upright(feet * 12, 240);

        assertThat(Barrels.ofCubicInches(tank.volume(101) - tank.volume(100))).isCloseTo(barrels, within(5e-5));
    }

    /** Our own worked example from the geometry: 12 ft across, 10 bbl an hour in, 24 in of room. */
    @Test
    void two_feet_of_room_last_four_hours_at_ten_barrels_an_hour() {
        var tank = new Upright(144, 240);
        double room = Barrels.ofCubicInches(tank.capacity() - tank.volume(216));

        assertThat(room / 10).isCloseTo(4.029, within(0.001));
    }

    /** AAPG wiki, read: 0.433 psi a foot for fresh water, and 0.489 at a gravity of 1.13. */
    @ParameterizedTest
    @CsvSource({"1.0, 0.433", "1.13, 0.489"})
    void a_foot_presses_as_the_handbooks_say(double gravity, double psi) {
        assertThat(new Head(gravity).psi(1)).isCloseTo(psi, within(0.0005));
    }

    /** The definition of API gravity, from memory, recomputed: 141.5 / (131.5 + API). */
    @ParameterizedTest
    @CsvSource({"10, 1.0000", "30, 0.8762", "40, 0.8251", "45, 0.8017"})
    void api_gravity_is_gravity_the_other_way_round(double api, double gravity) {
        assertThat(Head.ofApi(api).gravity()).isCloseTo(gravity, within(5e-5));
    }

    /** 40 API at 20 ft, recomputed from the two above. */
    @Test
    void twenty_feet_of_a_light_oil_press_with_7_psi() {
        assertThat(Head.ofApi(40).psi(20)).isCloseTo(7.145, within(0.001));
        assertThat(Head.ofApi(40).feet(7.145)).isCloseTo(20, within(0.002));
    }
}
