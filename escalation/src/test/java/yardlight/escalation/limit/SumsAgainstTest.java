package yardlight.escalation.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The worked example of NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.3, "CUSUM Control Charts": 20 values, target
 * 325, k = 0.3175, h = 4.1959, with its table of increases and decreases. The page was not at hand when this was written:
 * values and table are from memory, and agree with each other to the last printed digit.
 */
class SumsAgainstTest {

    private static final double[] VALUES = {
        324.925, 324.675, 324.725, 324.350, 325.350, 325.225, 324.125, 324.525, 325.225, 324.600,
        324.625, 325.150, 328.325, 327.250, 327.825, 328.500, 326.675, 327.775, 326.875, 328.350
    };
    private static final double[] HIGH = {
        0, 0, 0, 0, 0.03, 0, 0, 0, 0, 0, 0, 0, 3.01, 4.94, 7.45, 10.63, 11.99, 14.44, 16.00, 19.04
    };
    private static final double[] LOW = {0, 0.01, 0, 0.33, 0, 0, 0.56, 0.72, 0.17, 0.25, 0.31, 0, 0, 0, 0, 0, 0, 0, 0, 0
    };
    private static final Drift DRIFT =
            new Drift(new BigDecimal("325"), new BigDecimal("0.3175"), new BigDecimal("4.1959"));

    @Test
    void both_sums_are_those_of_the_table() {
        Sums sums = Sums.NONE;
        for (int i = 0; i < VALUES.length; i++) {
            sums = sums.next(VALUES[i], DRIFT);

            assertThat(sums.high()).as("S_hi %s", i + 1).isCloseTo(HIGH[i], within(0.006));
            assertThat(sums.low()).as("S_lo %s", i + 1).isCloseTo(LOW[i], within(0.006));
            assertThat(sums.signals(DRIFT)).as("signal %s", i + 1).isEqualTo(i + 1 >= 14);
        }
    }

    @Test
    void the_drift_is_found_at_the_fourteenth_value_and_over_some_values_after_it() {
        var rules = new Rules(
                Optional.empty(),
                Optional.empty(),
                Optional.of(DRIFT),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        var point = new Watched(rules);

        point.minutes(0, java.util.Arrays.copyOf(VALUES, 13));
        assertThat(point.turned()).isEmpty();
        point.minutes(13, java.util.Arrays.copyOfRange(VALUES, 13, 20));
        assertThat(point.turned()).containsExactly("+drift");
        // Kept at 2 h, it takes 8.3918 / 0.3175 values on target.
        for (int i = 0; i < 26; i++) {
            point.minutes(20 + i, 325);
        }
        assertThat(point.turned()).containsExactly("+drift");
        point.minutes(46, 325);
        assertThat(point.turned()).containsExactly("+drift", "-drift");
    }
}
