package yardlight.channels.smpp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SmppAddressTest {

    /** ITU-T E.164: at most 15 digits, the country's code first. Lengths of each country as libphonenumber 9.0.43 has them. */
    @ParameterizedTest
    @ValueSource(strings = {"+15755550101", "+14325550199", "+525512345678", "+442079460101"})
    void takes_numbers_as_long_as_their_country_has_them(String address) {
        assertThat(SmppAddress.complaintAbout(address)).isEmpty();
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
        assertThat(SmppAddress.complaintAbout(address).orElseThrow())
                .contains(complaint)
                .contains(address);
    }

    /** SMPP v3.4 sections 5.2.5 and 5.2.6, memory: 1 and 1 are international and ISDN. The rest is common practice. */
    @Test
    void writes_types_and_plans() {
        assertThat(SmppAddress.to("+15755550101")).isEqualTo(address(1, 1, "15755550101"));
        assertThat(SmppAddress.from("+15755550100")).isEqualTo(address(1, 1, "15755550100"));
        assertThat(SmppAddress.from("57555")).isEqualTo(address(3, 0, "57555"));
        assertThat(SmppAddress.from("Mesa 9")).isEqualTo(address(5, 0, "Mesa 9"));
        assertThat(SmppAddress.unknown()).isEqualTo(address(0, 0, ""));
        assertThatIllegalArgumentException().isThrownBy(() -> SmppAddress.from("twelve chars"));
        assertThatIllegalArgumentException().isThrownBy(() -> SmppAddress.from(""));
    }

    @ParameterizedTest
    @CsvSource({
        "1, 15755550101, +15755550101",
        "1, +15755550101, +15755550101",
        "0, 15755550101, +15755550101",
        "0, 5755550101, +15755550101",
        "2, 5755550101, +15755550101",
        "3, 57555, 57555",
        "5, MESA, MESA",
        "0, 911, 911",
        "0, '', ''"
    })
    void reads_a_sender_so_that_an_answer_can_be_addressed(int ton, String digits, String international) {
        assertThat(address(ton, 1, digits).international(Optional.of("+15755550100")))
                .isEqualTo(international);
    }

    @Test
    void guesses_no_country_where_our_own_number_has_none() {
        assertThat(address(2, 1, "5755550101").international(Optional.of("57555")))
                .isEqualTo("5755550101");
        assertThat(address(1, 1, "15755550101").international(Optional.empty())).isEqualTo("+15755550101");
        assertThat(address(0, 1, "15755550101").international(Optional.empty())).isEqualTo("+15755550101");
    }

    private static SmppAddress address(int ton, int npi, String digits) {
        return new SmppAddress((byte) ton, (byte) npi, digits);
    }
}
