package yardlight.gateway.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Conversions against the factors of NIST Special Publication 811 (2008), Appendix B.8, as they are printed there: seven digits, or exact.
 * The factors were written down from knowledge of the table; those of barrel and gallon were also read, to the same digits, in the
 * Monthly Energy Review of the US Energy Information Administration, Appendix B.
 */
class UnitsAgainstTest {

    @ParameterizedTest
    @CsvSource({
        "ft, m, 3.048E-01",
        "in, m, 2.54E-02",
        "in, cm, 2.54E+00",
        "in, mm, 2.54E+01",
        "bar, kPa, 1.0E+02",
    })
    void agree_exactly_where_the_factor_is_exact(String from, String to, String factor) {
        assertThat(Units.convert(BigDecimal.ONE, from, to)).isEqualTo(Double.parseDouble(factor));
    }

    @ParameterizedTest
    @CsvSource({"psi, kPa, 6.894757E+00", "gal, m3, 3.785412E-03", "bbl, m3, 1.589873E-01", "gal, L, 3.785412E+00"})
    void agree_to_seven_digits(String from, String to, double factor) {
        assertThat(Units.convert(BigDecimal.ONE, from, to)).isCloseTo(factor, within(factor * 1.5e-7));
    }

    /** t/°C = (t/°F - 32)/1.8, the same table. */
    @ParameterizedTest
    @CsvSource({"32, 0", "212, 100", "-40, -40", "98.6, 37", "68, 20"})
    void of_temperatures_shift_as_well(BigDecimal fahrenheit, double celsius) {
        assertThat(Units.convert(fahrenheit, "°F", "°C")).isEqualTo(celsius);
        assertThat(Units.convert(BigDecimal.valueOf(celsius), "degC", "F")).isEqualTo(fahrenheit.doubleValue());
    }

    /** 42 US gallons of 231 cubic inches each (NIST Handbook 44, Appendix C): the 9702 cubic inches of a tank gauger. */
    @Test
    void know_the_barrel_of_petroleum() {
        assertThat(Units.convert(BigDecimal.ONE, "bbl", "gal")).isEqualTo(42);
        assertThat(Units.convert(BigDecimal.ONE, "bbl", "m³")).isCloseTo(9702 * Math.pow(0.0254, 3), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"ft, in, 12", "m, cm, 100", "kPa, Pa, 1000", "bar, mbar, 1000", "A, mA, 1000", "V, mV, 1000"})
    void of_one_kind_differ_by_a_whole_factor(String from, String to, double factor) {
        assertThat(Units.convert(BigDecimal.ONE, from, to)).isEqualTo(factor);
        assertThat(Units.convert(BigDecimal.valueOf(factor), to, from)).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "ft, in, 12.4",
        "psi, kPa, 41.7",
        "bar, psi, 2.75",
        "bbl, gal, 187.5",
        "bbl, m³, 187.5",
        "gal, m3, 7875",
        "F, C, 71.3"
    })
    void come_back_to_nine_digits(String from, String to, double value) {
        double there = Units.convert(value, from, to);

        assertThat(Units.convert(there, to, from)).isCloseTo(value, within(value * 2e-8));
    }

    @ParameterizedTest
    @CsvSource({"ft, FT", "psi, PSI", "m³, M3", "°F, degf", "mA, ma", "rpm, rpm"})
    void of_the_same_unit_leave_a_value_as_it_was(String from, String to) {
        assertThat(Units.fit(from, to)).isTrue();
        assertThat(Units.convert(new BigDecimal("12.3456789012345"), from, to)).isEqualTo(12.3456789012345);
    }

    @ParameterizedTest
    @CsvSource({"ft, psi", "A, V", "m, m3", "°F, ft", "rpm, ft", "rpm, strokes", "%, ft"})
    void refuse_what_does_not_fit(String from, String to) {
        assertThat(Units.fit(from, to)).isFalse();
        assertThatThrownBy(() -> Units.convert(BigDecimal.ONE, from, to))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("units must fit each other: " + from + ", " + to);
    }
}
