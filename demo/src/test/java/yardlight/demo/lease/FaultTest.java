package yardlight.demo.lease;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import org.junit.jupiter.params.provider.ValueSource;

/** Each fault changes what it should, and leaves alone what it should. */
class FaultTest {

    private static final Duration DAY = Duration.ofDays(1);
    private static final Duration HOUR = Duration.ofHours(1);

    @Test
    void there_are_twelve_as_people_count_them_and_a_switch_that_sticks_does_so_both_ways() {
        assertThat(Fault.values()).hasSize(12 + 1);
    }

    @Test
    void without_power_the_pump_stands_and_its_feed_says_so_while_the_wells_fill_the_tank() {
        Lease lease = after(Fault.POWER, HOUR);

        assertThat(lease.readings().pump()).isFalse();
        assertThat(lease.readings().feeds()).containsEntry("pump", false).containsEntry("wells", true);
        assertThat(rise(lease)).isPositive();
    }

    @Test
    void with_a_blown_fuse_the_pump_stands_and_no_feed_says_so() {
        Lease lease = after(Fault.FUSE, HOUR);

        assertThat(lease.readings().pump()).isFalse();
        assertThat(lease.readings().feeds()).containsEntry("pump", true);
        assertThat(rise(lease)).isPositive();
    }

    @Test
    void with_a_burnt_belt_the_motor_runs_and_nothing_moves() {
        Lease lease = after(Fault.BELT, HOUR);
        double injected = lease.ledger().injected();

        lease.step(HOUR);

        assertThat(lease.readings().pump()).isTrue();
        assertThat(lease.ledger().injected()).isEqualTo(injected);
        assertThat(lease.readings().injection()).isLessThan(450);
        assertThat(rise(lease)).isPositive();
    }

    @Test
    void with_a_switch_that_sticks_on_the_pump_draws_the_tank_down_to_its_suction() {
        Lease lease = after(Fault.SWITCH_STUCK_ON, DAY);

        assertThat(Watched.pumpShare(lease, DAY)).isEqualTo(1);
        assertThat(lease.waterLevel()).isCloseTo(InjectionPump.SUCTION, within(0.2));
        assertThat(lease.ledger().overflowed()).isZero();
    }

    @Test
    void with_a_switch_that_sticks_off_the_pump_never_starts() {
        Lease lease = after(Fault.SWITCH_STUCK_OFF, Duration.ZERO);

        assertThat(Watched.pumpShare(lease, HOUR.multipliedBy(4))).isZero();
    }

    @Test
    void with_trash_in_it_the_pump_runs_on_and_falls_behind() {
        Lease lease = after(Fault.TRASH, DAY);

        assertThat(Watched.pumpShare(lease, HOUR)).isEqualTo(1);
        assertThat(lease.waterLevel()).isGreaterThan(lease.design().floats().start());
        assertThat(lease.readings().injection()).isLessThan(530);
    }

    @Test
    void with_a_hole_in_the_flow_line_the_separator_falls_to_about_5_psi_within_minutes_and_oil_and_water_run_out() {
        Lease lease = after(Fault.FLOW_LINE_HOLE, Duration.ofMinutes(12));

        assertThat(lease.readings().separator()).isCloseTo(5, within(2.5));
        assertThat(lease.ledger().spilled()).isPositive();
    }

    @ParameterizedTest
    @EnumSource(
            value = Fault.class,
            names = {"TUBING_LEAK", "WELL_OFF", "FLOW_LINE_HOLE"})
    void with_less_fluid_the_pump_runs_less(Fault fault) {
        Lease lease = after(fault, DAY.multipliedBy(3));

        assertThat(Watched.pumpShare(lease, DAY.multipliedBy(2)))
                .isLessThan(lease.design().share() - 0.08);
    }

    @Test
    void a_tubing_leak_grows_over_days_and_a_well_that_goes_off_is_off_at_once() {
        Lease lease = after(Fault.TUBING_LEAK, Duration.ZERO);
        double first = lifted(lease);
        lease.step(DAY.multipliedBy(3));

        assertThat(lifted(lease)).isLessThan(first - lease.design().lifted() * 0.06);
        assertThat(lifted(after(Fault.WELL_OFF, Duration.ZERO))).isLessThan(first);
    }

    private static double lifted(Lease lease) {
        double before = lease.ledger().lifted();
        lease.step(DAY);
        return lease.ledger().lifted() - before;
    }

    @Test
    void a_leak_of_the_injection_line_lets_its_pressure_go_while_the_pump_runs() {
        Lease lease = Watched.pumping(3, 1.2);
        lease.begin(Fault.INJECTION_LEAK);
        lease.step(Duration.ofMinutes(15));

        assertThat(lease.readings().pump()).isTrue();
        assertThat(lease.readings().injection()).isLessThan(350);
        assertThat(lease.ledger().spilled()).isPositive();
    }

    @Test
    void a_sensor_that_sticks_shows_one_number_while_the_tank_goes_its_ways() {
        Lease lease = after(Fault.SENSOR_STUCK, Duration.ZERO);
        double shown = lease.readings().water();

        Watched.mean(lease, DAY, at -> {
            assertThat(at.readings().water()).isEqualTo(shown);
            return 0;
        });

        assertThat(Math.abs(lease.waterLevel() - shown)).isLessThan(4);
        assertThat(lease.ledger().overflowed()).isZero();
    }

    @Test
    void a_sensor_that_drifts_is_a_foot_away_from_the_truth_within_days() {
        Lease lease = after(Fault.SENSOR_DRIFT, DAY.multipliedBy(4));

        assertThat(Math.abs(lease.waterLevel() - lease.readings().water())).isGreaterThan(1);
    }

    @Test
    void rain_through_the_hatch_is_inches_and_ends() {
        Lease lease = after(Fault.RAIN, HOUR.multipliedBy(4));
        double rained = lease.ledger().rained();

        lease.step(DAY);

        assertThat(rained).isBetween(2 * 1.6786, 12 * 1.6786);
        assertThat(lease.ledger().rained()).isEqualTo(rained);
    }

    @ParameterizedTest
    @EnumSource(
            value = Fault.class,
            names = {"POWER", "BELT", "FUSE", "SWITCH_STUCK_OFF", "TRASH"})
    void what_stops_the_pump_makes_the_tank_run_over_within_two_days_and_the_plain_switch_trips_before(Fault fault) {
        Lease lease = after(fault, Duration.ZERO);

        long tripped = Watched.minutes(lease, DAY.multipliedBy(2), Lease::highSwitch);
        long left =
                Watched.minutes(lease, DAY.multipliedBy(2), at -> at.ledger().overflowed() > 0);

        assertThat(tripped).isBetween(120L, 2_879L);
        assertThat(left).isBetween(20L, 600L);
    }

    @ParameterizedTest
    @EnumSource(
            value = Fault.class,
            mode = Mode.EXCLUDE,
            names = {"POWER", "BELT", "FUSE", "SWITCH_STUCK_OFF", "TRASH"})
    void nothing_else_makes_the_tank_run_over(Fault fault) {
        Lease lease = after(fault, DAY.multipliedBy(10));

        assertThat(lease.ledger().overflowed()).isZero();
        assertThat(lease.highSwitch()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void a_lease_that_is_well_never_trips_the_switch(long seed) {
        Lease lease = Watched.running(seed);

        assertThat(Watched.minutes(lease, DAY.multipliedBy(60), Lease::highSwitch))
                .isEqualTo(60 * 1_440L);
    }

    private static double rise(Lease lease) {
        double before = lease.waterLevel();
        lease.step(HOUR);
        return lease.waterLevel() - before;
    }

    private static Lease after(Fault fault, Duration length) {
        Lease lease = Watched.running(3);
        lease.begin(fault);
        lease.step(length);
        return lease;
    }
}
