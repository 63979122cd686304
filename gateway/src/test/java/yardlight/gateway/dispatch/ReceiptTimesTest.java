package yardlight.gateway.dispatch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.Test;
import yardlight.channels.Attempt;

class ReceiptTimesTest {

    private static final Attempt NAMED = Attempt.accepted("taken", "a-1");

    private final ReceiptTimes times =
            new ReceiptTimes(Map.of("smpp", Duration.ofMinutes(2), "http-text", Duration.ZERO));

    @Test
    void are_those_of_the_channels_that_are_named() {
        assertThat(times.of("smpp", NAMED)).contains(Duration.ofMinutes(2));
        assertThat(times.of("mail", NAMED)).isEmpty();
        assertThat(times.of("http-text", NAMED)).isEmpty();
    }

    @Test
    void are_none_for_a_message_without_a_name_that_a_receipt_could_give() {
        assertThat(times.of("smpp", Attempt.accepted("taken"))).isEmpty();
    }

    @Test
    void must_not_be_negative() {
        assertThatThrownBy(() -> new DispatchSettings(
                        Duration.ofSeconds(1), 1, Duration.ofSeconds(30), Map.of("smpp", Duration.ofSeconds(-1))))
                .hasMessage("yardlight.dispatch.receipt-within.smpp must not be negative: PT-1S");
    }
}
