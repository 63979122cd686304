package yardlight.channels.modem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.modem.ModemSettings.Sim;
import yardlight.channels.modem.ModemSettings.Timeouts;

class ModemSettingsTest {

    private static Sim sim(String pin) {
        return new Sim(Optional.of(pin), Optional.empty(), Optional.empty());
    }

    private static ModemSettings settings(String port, int speed, String number, Duration validity) {
        return new ModemSettings(port, speed, sim("1234"), Optional.of(number), validity, Timeouts.USUAL);
    }

    @Test
    void keep_the_pin_back() {
        assertThat(settings("/dev/ttyUSB2", 9600, "+15755550100", Duration.ofHours(1))
                        .toString())
                .contains("/dev/ttyUSB2", "with a PIN")
                .doesNotContain("1234");
    }

    /** 3GPP TS 31.101 clause 9.5.1: 4 to 8 digits. Memory. */
    @ParameterizedTest
    @ValueSource(strings = {"123", "123456789", "12a4", "12\"4", ""})
    void take_no_pin_that_is_none_and_do_not_repeat_it(String pin) {
        assertThatIllegalArgumentException().isThrownBy(() -> sim(pin)).withMessage("modem PIN must be 4 to 8 digits");
    }

    @Test
    void take_nothing_that_cannot_work() {
        Duration hour = Duration.ofHours(1);
        assertThatIllegalArgumentException().isThrownBy(() -> settings(" ", 9600, "+15755550100", hour));
        assertThatIllegalArgumentException().isThrownBy(() -> settings("COM3", 1, "+15755550100", hour));
        assertThatIllegalArgumentException().isThrownBy(() -> settings("COM3", 9600, "5755550100", hour));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> settings("COM3", 9600, "+15755550100", Duration.ofMinutes(4)));
        assertThatIllegalArgumentException().isThrownBy(() -> new Timeouts(hour, hour, Duration.ZERO, hour));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Sim(Optional.empty(), Optional.of("12"), Optional.empty()));
    }
}
