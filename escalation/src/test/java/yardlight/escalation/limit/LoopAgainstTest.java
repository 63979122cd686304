package yardlight.escalation.limit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * NAMUR NE 43, signal level for the failure information of digital transmitters: measurements from 3.8 to 20.5 mA, failure at
 * 3.6 mA and below or 21 mA and above. Read in several makers' and trade accounts of it, not in the paid original.
 */
class LoopAgainstTest {

    private static final Current LOOP = new Current(BigDecimal.ZERO, new BigDecimal("20"));
    private static final Rules RULES = new Rules(
            Optional.of(Watched.high("16", "0.5")),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(LOOP));

    private final Watched tank = new Watched(RULES);
    private int minute;

    private List<String> reading(double milliamps) {
        tank.read(Duration.ofMinutes(minute++), LOOP.scaled(milliamps));
        return tank.turned();
    }

    @ParameterizedTest
    @CsvSource({
        "0, true",
        "3.6, true",
        "3.61, false",
        "3.8, false",
        "12, false",
        "20.5, false",
        "20.99, false",
        "21, true",
        "25, true"
    })
    void a_failure_is_at_its_ends(double milliamps, boolean failed) {
        assertThat(reading(milliamps).contains("+sensor-fault")).isEqualTo(failed);
    }

    @Test
    void what_lies_between_neither_sets_nor_clears() {
        assertThat(reading(3.7)).isEmpty();
        assertThat(reading(3.5)).containsExactly("+sensor-fault");
        assertThat(reading(3.7)).containsExactly("+sensor-fault");
        assertThat(reading(20.8)).containsExactly("+sensor-fault");
        assertThat(reading(3.8)).containsExactly("+sensor-fault", "-sensor-fault");
    }

    @Test
    void the_current_is_shown_and_not_what_it_would_be_in_feet() {
        reading(21.5);

        Finding fault = tank.findings().get(0);
        assertThat(fault.value()).contains(new BigDecimal("21.5"));
        assertThat(fault.limit()).contains(new BigDecimal("21.0"));
        assertThat(fault.unit()).contains("mA");
    }

    /** 20 mA stand for 20 ft: 22 mA would be 22.5 ft, far above the limit. */
    @Test
    void a_broken_loop_measures_nothing() {
        reading(12);
        reading(22);
        reading(20.7);

        assertThat(tank.turned()).containsExactly("+sensor-fault");
        assertThat(tank.gauge().newest().orElseThrow().value()).isEqualTo(10);
        assertThat(tank.gauge().recent().size()).isEqualTo(1);
    }

    @Test
    void a_loop_scales_both_ways_round() {
        var upsideDown = new Current(new BigDecimal("20"), BigDecimal.ZERO);

        assertThat(upsideDown.scaled(4)).isEqualTo(20);
        assertThat(upsideDown.scaled(20)).isZero();
        assertThat(upsideDown.milliamps(15)).isEqualTo(8);
        assertThat(LOOP.scaled(12)).isEqualTo(10);
    }
}
