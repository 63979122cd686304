package yardlight.channels.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.mail.MailSettings.Login;
import yardlight.channels.mail.MailSettings.Timeouts;
import yardlight.channels.mail.MailSettings.Tls;

class MailSettingsTest {

    @Test
    void do_not_give_the_password_away() {
        MailSettings settings =
                Settings.with(587, Tls.STARTTLS, Optional.of(new Login("yard", "hunter2")), Optional.empty());

        assertThat(settings.toString()).contains("yard").doesNotContain("hunter2");
    }

    @Test
    void wait_for_seconds_and_not_for_the_minutes_of_RFC_5321() {
        assertThat(Timeouts.USUAL.whole()).isLessThanOrEqualTo(Duration.ofMinutes(1));
        assertThat(Timeouts.USUAL.connect()).isLessThan(Timeouts.USUAL.reply());
        assertThat(Timeouts.USUAL.reply()).isLessThan(Timeouts.USUAL.whole());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1, 65_536})
    void refuse_a_port_that_there_is_not(int port) {
        assertThatThrownBy(() -> MailSettings.of("localhost", port, Tls.NONE, Settings.FROM))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("mail port must be 1 to 65535");
    }

    @Test
    void refuse_a_time_that_would_never_end_or_is_none() {
        Duration second = Duration.ofSeconds(1);

        assertThatThrownBy(() -> new Timeouts(Duration.ZERO, second, second))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Timeouts(second, second, Duration.ofDays(1)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void take_a_fingerprint_as_tools_print_it() {
        String printed = "AB:".repeat(31) + "AB";

        MailSettings settings = Settings.with(587, Tls.STARTTLS, Optional.empty(), Optional.of(printed));

        assertThat(settings.certificate()).contains("ab".repeat(32));
        assertThatThrownBy(() -> Settings.with(587, Tls.STARTTLS, Optional.empty(), Optional.of("abc")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refuse_a_sender_that_is_not_one_plain_address() {
        assertThatThrownBy(() -> MailSettings.of("localhost", 25, Tls.NONE, "Yard <a@b.example>"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("mail sender is not one plain mail address");
    }
}
