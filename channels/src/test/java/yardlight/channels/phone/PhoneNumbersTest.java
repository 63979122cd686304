package yardlight.channels.phone;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.phone.PhoneNumbers.Kind;

class PhoneNumbersTest {

    /** ITU-T E.164: at most 15 digits, the country's code first. Lengths of each country as libphonenumber 9.0.43 has them. */
    @ParameterizedTest
    @ValueSource(strings = {"+15755550101", "+14325550199", "+525512345678", "+442079460101"})
    void takes_numbers_as_long_as_their_country_has_them(String address) {
        assertThat(PhoneNumbers.complaintAbout(address)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "5755550101, not a phone number",
        "+1 575 555 0101, not a phone number",
        "+1575555010, too few digits",
        "+157555501011, too many digits",
        "+9995755550101, no country",
        "+15755550101;+15755550102, not a phone number",
        "5755550101@txt.example, not a phone number"
    })
    void says_what_is_wrong(String address, String complaint) {
        assertThat(PhoneNumbers.complaintAbout(address).orElseThrow())
                .contains(complaint)
                .contains(address);
    }

    @ParameterizedTest
    @CsvSource({
        "INTERNATIONAL, 15755550101, +15755550101",
        "INTERNATIONAL, +15755550101, +15755550101",
        "UNKNOWN, 15755550101, +15755550101",
        "UNKNOWN, 5755550101, +15755550101",
        "NATIONAL, 5755550101, +15755550101",
        "UNKNOWN, 57555, 57555",
        "NAME, MESA, MESA",
        "UNKNOWN, 911, 911",
        "UNKNOWN, '', ''"
    })
    void have_one_form_whatever_a_carrier_calls_them(Kind kind, String digits, String international) {
        assertThat(PhoneNumbers.international(kind, digits, Optional.of("+15755550100")))
                .isEqualTo(international);
    }

    @Test
    void have_no_country_where_nobody_knows_one() {
        assertThat(PhoneNumbers.international(Kind.NATIONAL, "5755550101", Optional.empty()))
                .isEqualTo("5755550101");
        assertThat(PhoneNumbers.international(Kind.INTERNATIONAL, "15755550101", Optional.empty()))
                .isEqualTo("+15755550101");
    }
}
