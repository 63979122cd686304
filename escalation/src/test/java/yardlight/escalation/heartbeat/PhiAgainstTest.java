package yardlight.escalation.heartbeat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Phi accrual: phi = -log10(P_later(now - T_last)), P_later of the normal distribution. Hayashibara, Defago, Yared, Katayama,
 * "The phi accrual failure detector", SRDS 2004, pp. 66-78 (read in four independent quotations). The values were worked out
 * anew from that formula to 40 digits, not with this code.
 */
class PhiAgainstTest {

    private static final double CLOSE = 1e-9;

    @ParameterizedTest
    @CsvSource({
        "60, 0.301029995664",
        "65, 0.799545541492",
        "70, 1.64301608014",
        "75, 2.86969903593",
        "80, 4.49933490756",
        "85, 6.54264567239",
        "90, 9.00586432748",
        "100, 15.206142551",
        "400, 1006.32053488"
    })
    void is_as_published_for_a_mean_of_60_s_and_a_deviation_of_5_s(double waited, double phi) {
        assertThat(Phi.of(waited, 60, 5)).isCloseTo(phi, within(CLOSE * Math.max(1, phi)));
    }

    @ParameterizedTest
    @CsvSource({
        "1, 66.4077578277",
        "2, 71.6317393702",
        "3, 75.4511615308",
        "5, 81.3244539696",
        "8, 88.0600062209",
        "12, 95.1724191265"
    })
    void is_reached_after_the_published_wait(double phi, double wait) {
        assertThat(Phi.reached(phi, 60, 5)).isCloseTo(wait, within(CLOSE));
    }

    /** Window 58 61 60 59 62 60 57 63: mean 60, population variance 3.5, sample variance 4. */
    @ParameterizedTest
    @CsvSource({"66, 3.5, 3.17371746067", "70, 3.5, 7.34531874309", "66, 4, 2.86969903593", "70, 4, 6.54264567239"})
    void is_as_published_for_a_window_with_either_variance(double waited, double variance, double phi) {
        assertThat(Phi.of(waited, 60, Math.sqrt(variance))).isCloseTo(phi, within(CLOSE));
    }

    /** The paper: with phi 1, 2, 3 the chance of a wrong suspicion is about 10 %, 1 %, 0.1 %. */
    @Test
    void is_the_number_of_zeros_in_the_chance_to_be_wrong() {
        for (int phi = 1; phi <= 3; phi++) {
            double wait = Phi.reached(phi, 0, 1);

            assertThat(1 - normal(wait)).isCloseTo(Math.pow(10, -phi), within(1e-6));
        }
    }

    @Test
    void is_reached_where_it_is_however_long_that_takes() {
        for (double phi = 0.01; phi < 50; phi *= 1.3) {
            assertThat(Phi.of(Phi.reached(phi, 600, 30), 600, 30)).isCloseTo(phi, within(1e-6));
        }
    }

    /** By adding up the density: slow, plain, and another way than the one tested. */
    private static double normal(double z) {
        double sum = 0;
        double step = 1e-5;
        for (double x = step / 2; x < z; x += step) {
            sum += Math.exp(-x * x / 2);
        }
        return 0.5 + sum * step / Math.sqrt(2 * Math.PI);
    }
}
