package yardlight.demo.lease;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The lease as physics. Shares of the day and pressures are common practice of the trade, without a published source. */
class LeaseTest {

    private static final Duration DAY = Duration.ofDays(1);

    @ParameterizedTest
    @EnumSource
    void no_barrel_is_lost_or_made_whatever_breaks(Fault fault) {
        Lease lease = Watched.running(3);
        lease.begin(fault);

        lease.step(DAY.multipliedBy(3));

        assertThat(lease.ledger().lifted()).isGreaterThan(lease.design().lifted() * 3);
        assertThat(lease.ledger().missing()).isCloseTo(0, within(1e-6));
    }

    @Test
    void what_comes_up_is_what_the_design_says_and_goes_into_the_ground_and_on_the_truck() {
        var lease = new Lease(LeaseDesign.plain(), 1);

        lease.step(DAY.multipliedBy(30));

        Ledger ledger = lease.ledger();
        assertThat(ledger.lifted()).isCloseTo(30 * 645.0, within(30 * 645 * 0.03));
        assertThat(ledger.injected() / ledger.lifted()).isCloseTo(0.93, within(0.02));
        assertThat(ledger.hauled()).isGreaterThan(800);
        assertThat(ledger.overflowed() + ledger.spilled() + ledger.rained()).isZero();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void the_pump_of_a_lease_that_is_well_runs_its_share_of_the_day_and_the_level_stays_between_the_floats(long seed) {
        Lease lease = Watched.running(seed);
        LeaseDesign.Floats floats = lease.design().floats();
        var levels = new ArrayList<Double>();

        double share = Watched.mean(lease, DAY.multipliedBy(10), at -> {
            levels.add(at.readings().water());
            return at.readings().pump() ? 1 : 0;
        });

        assertThat(share).isBetween(0.55, 0.77).isCloseTo(lease.design().share(), within(0.05));
        assertThat(levels)
                .allSatisfy(level -> assertThat(level).isBetween(floats.stop() - 0.15, floats.start() + 0.15));
        assertThat(starts(seed)).isBetween(15L, 100L);
    }

    private static long starts(long seed) {
        Lease lease = Watched.running(seed);
        long starts = 0;
        boolean before = lease.readings().pump();
        for (int minute = 0; minute < DAY.toMinutes() * 10; minute++) {
            lease.step(Duration.ofMinutes(1));
            boolean runs = lease.readings().pump();
            starts += runs && !before ? 1 : 0;
            before = runs;
        }
        return starts;
    }

    @Test
    void the_separator_stands_at_about_30_psi_and_the_injection_line_higher_while_the_pump_runs() {
        Lease lease = Watched.running(2);

        var running = new ArrayList<Double>();
        var standing = new ArrayList<Double>();
        double separator = Watched.mean(lease, DAY.multipliedBy(4), at -> {
            Readings now = at.readings();
            (now.pump() ? running : standing).add(now.injection());
            return now.separator();
        });

        assertThat(separator).isCloseTo(30, within(1.0));
        assertThat(mean(running)).isBetween(580.0, 650.0);
        assertThat(mean(standing)).isBetween(370.0, 480.0);
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    @Test
    void the_same_seed_gives_the_same_lease_however_its_time_is_cut() {
        var one = new Lease(LeaseDesign.plain(), 7);
        var other = new Lease(LeaseDesign.plain(), 7);

        one.step(DAY);
        for (int minute = 0; minute < DAY.toMinutes(); minute++) {
            other.step(Duration.ofMinutes(1));
        }

        assertThat(other.readings()).isEqualTo(one.readings());
        assertThat(other.ledger()).isEqualTo(one.ledger());
        assertThat(new Lease(LeaseDesign.plain(), 8).readings()).isNotEqualTo(one.readings());
    }

    @Test
    void time_passes_in_whole_pieces_only() {
        var lease = new Lease(LeaseDesign.plain(), 1);

        assertThatIllegalArgumentException().isThrownBy(() -> lease.step(Duration.ofSeconds(30)));
        assertThatIllegalArgumentException().isThrownBy(() -> lease.step(Duration.ofMinutes(-1)));
        assertThat(lease.passed()).isZero();
    }
}
