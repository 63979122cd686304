package yardlight.channels.smpp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.channels.smpp.SmppSettings.Login;
import yardlight.channels.smpp.SmppSettings.Timeouts;

class SmppSettingsTest {

    @ParameterizedTest
    @CsvSource({
        "'', 2775, 10, +15755550100, host",
        "two words, 2775, 10, +15755550100, host",
        "smsc.example, 0, 10, +15755550100, port",
        "smsc.example, 65536, 10, +15755550100, port",
        "smsc.example, 2775, 0, +15755550100, window",
        "smsc.example, 2775, 101, +15755550100, window",
        "smsc.example, 2775, 10, not.a.sender, sender"
    })
    void refuse_what_cannot_be(String host, int port, int window, String from, String what) {
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new SmppSettings(host, port, false, Centres.LOGIN, Optional.of(from), window, Timeouts.USUAL))
                .withMessageStartingWith("SMPP " + what);
    }

    /** SMPP v3.4 sections 5.2.1 to 5.2.3, memory: 16, 9 and 13 octets with their NUL. */
    @ParameterizedTest
    @CsvSource({"15, 8, 12, true", "16, 8, 12, false", "15, 9, 12, false", "15, 8, 13, false", "0, 8, 12, false"})
    void hold_a_login_to_its_lengths(int systemId, int password, int systemType, boolean fits) {
        boolean made;
        try {
            new Login("i".repeat(systemId), "p".repeat(password), "t".repeat(systemType));
            made = true;
        } catch (IllegalArgumentException e) {
            assertThat(e).hasMessageNotContaining("pp");
            made = false;
        }

        assertThat(made).isEqualTo(fits);
    }

    @Test
    void keep_the_password_back() {
        assertThat(Centres.at(2775).toString()).doesNotContain(Centres.PASSWORD).contains("yardlight");
    }

    @Test
    void refuse_to_wait_for_nothing_or_for_hours() {
        Duration second = Duration.ofSeconds(1);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Timeouts(second, Duration.ZERO, second, second))
                .withMessageContaining("response");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Timeouts(second, second, Duration.ofHours(2), second))
                .withMessageContaining("whole");
    }
}
