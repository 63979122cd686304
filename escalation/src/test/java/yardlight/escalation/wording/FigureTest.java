package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureTest {

    @ParameterizedTest
    @CsvSource({
        "18.0, 18.0",
        "18.4, 18.4",
        "-3, -3",
        "0, 0",
        "0.00, 0.00",
        "1E+3, 1000",
        "0.00000012, 0.00000012",
        "123456.12345, 123456.12345",
        "123456789012, 123456789012"
    })
    void is_read_as_the_box_wrote_it(String number, String read) {
        assertThat(Figure.of(new BigDecimal(number))).isEqualTo(read);
    }

    @ParameterizedTest
    @CsvSource({
        "3.14159265358979323846, 3.141593",
        "-18.3999999999999986, -18.400000",
        "123456.123456789012, 123456.123",
        "123456789012.5, 123456789013",
        "0.0000001234567890123, 0.000000",
        "1E-400, 0",
        "0E+400, 0",
        "0E-400, 0.000000"
    })
    void is_rounded_when_it_is_long(String number, String read) {
        assertThat(Figure.of(new BigDecimal(number))).isEqualTo(read);
    }

    @ParameterizedTest
    @CsvSource({
        "1E+400, 1E+400",
        "-1.5E+400, -1.5E+400",
        "1234567890123, 1.23E+12",
        "1234567890123456789012345678901234567890, 1.23E+39"
    })
    void has_a_power_of_ten_when_it_is_absurd(String number, String read) {
        assertThat(Figure.of(new BigDecimal(number))).isEqualTo(read);
    }

    @Test
    void stays_short_at_the_ends_of_what_a_number_can_be() {
        for (String number : new String[] {
            "1E+2147483647", "-9.99E+2147483647", "1E-2147483647", "0E+2147483647", "0E-2147483647", "-999999999999.99"
        }) {
            assertThat(Figure.of(new BigDecimal(number))).as(number).hasSizeLessThanOrEqualTo(18);
        }
    }
}
