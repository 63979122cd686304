package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNoException;

import org.junit.jupiter.api.Test;

class TimingTest {

    @Test
    void delays_may_be_nothing_but_not_less() {
        assertThatNoException().isThrownBy(() -> OneAlarm.onDelay(0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OneAlarm.onDelay(-1))
                .withMessage("onDelay must not be negative: PT-1S");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OneAlarm.offDelay(-1))
                .withMessage("offDelay must not be negative: PT-1S");
    }

    @Test
    void an_alarm_is_not_called_again_without_a_pause() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OneAlarm.realarm(0))
                .withMessage("realarm must be positive: PT0S");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OneAlarm.realarm(-1))
                .withMessage("realarm must be positive: PT-1S");
    }
}
