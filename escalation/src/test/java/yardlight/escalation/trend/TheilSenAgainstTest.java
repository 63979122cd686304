package yardlight.escalation.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Slope, intercept and interval against the function {@code scipy.stats.theilslopes} of SciPy 1.17.1, which goes by P. K. Sen,
 * Estimates of the regression coefficient based on Kendall's tau, JASA 63 (1968). The figures are what it printed, run here.
 */
class TheilSenAgainstTest {

    private static final double CLOSE = 1e-12;
    /** Of the normal distribution, for 95 and 90 of 100. */
    private static final double Z_95 = 1.959963984540054;

    private static final double Z_90 = 1.6448536269514722;

    @Test
    void is_as_the_library_has_it_with_one_wild_reading() {
        double[] x = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9};
        double[] y = {1.0, 1.4, 2.1, 2.4, 9.0, 3.6, 3.9, 4.6, 5.2, 5.4};

        is(TheilSen.fit(x, y, Z_95), 0.5, 1.5, 0.45000000000000007, 0.55);
        is(TheilSen.fit(x, y, Z_90), 0.5, 1.5, 0.4666666666666666, 0.5499999999999999);
    }

    @Test
    void is_as_the_library_has_it_with_uneven_times() {
        double[] x = {0, 1, 3, 4, 7, 8, 12, 13, 15, 20, 21, 26};
        double[] y = {5.0, 4.8, 4.9, 4.1, 3.9, 3.7, 3.2, 3.3, 2.6, 2.2, 2.0, 1.4};

        is(TheilSen.fit(x, y, Z_95), -0.1392307692307692, 4.892307692307693, -0.15882352941176472, -0.125);
        is(TheilSen.fit(x, y, Z_90), -0.1392307692307692, 4.892307692307693, -0.15714285714285717, -0.1277777777777778);
    }

    @Test
    void is_as_the_library_has_it_with_values_that_come_twice() {
        double[] x = {0, 1, 2, 3, 4, 5, 6, 7};
        double[] y = {2.0, 2.0, 2.5, 2.5, 2.5, 3.0, 3.0, 3.5};

        is(TheilSen.fit(x, y, Z_95), 0.2, 1.7999999999999998, 0.125, 0.25);
        is(TheilSen.fit(x, y, Z_90), 0.2, 1.7999999999999998, 0.16666666666666666, 0.25);
    }

    /** Noise by the generator of the C standard's example, so that both programs had the same. */
    @Test
    void is_as_the_library_has_it_with_an_hour_of_noise() {
        var x = new double[60];
        var y = new double[60];
        long seed = 12_345;
        for (int i = 0; i < 60; i++) {
            seed = (seed * 1_103_515_245L + 12_345) % 2_147_483_648L;
            x[i] = i;
            y[i] = 3 + 0.021 * i + (seed / 2_147_483_648.0 - 0.5) * 0.4;
        }

        assertThat(y[59]).isEqualTo(4.360480512060225);
        is(
                TheilSen.fit(x, y, Z_95),
                0.02090900384360239,
                3.0228880124976367,
                0.01924889967174725,
                0.022666446182538155);
    }

    @Test
    void a_single_point_is_no_line() {
        assertThatIllegalArgumentException().isThrownBy(() -> TheilSen.fit(new double[1], new double[1], 2));
    }

    private static void is(TheilSen line, double slope, double intercept, double low, double high) {
        assertThat(line.slope()).isCloseTo(slope, within(CLOSE));
        assertThat(line.intercept()).isCloseTo(intercept, within(CLOSE));
        assertThat(line.low()).isCloseTo(low, within(CLOSE));
        assertThat(line.high()).isCloseTo(high, within(CLOSE));
        assertThat(line.at(2)).isCloseTo(intercept + 2 * slope, within(CLOSE));
    }
}
