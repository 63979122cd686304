package yardlight.channels.smpp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SmppAddressTest {

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
