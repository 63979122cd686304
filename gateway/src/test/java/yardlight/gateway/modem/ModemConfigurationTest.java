package yardlight.gateway.modem;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.runner.ApplicationContextRunner;
import yardlight.channels.Channel;
import yardlight.channels.Health;
import yardlight.channels.Receiver;

class ModemConfigurationTest {

    private final ApplicationContextRunner gateway = new ApplicationContextRunner()
            .withUserConfiguration(ModemConfiguration.class)
            .withPropertyValues("yardlight.home=target")
            .withBean(InstantSource.class, () -> InstantSource.fixed(Instant.EPOCH));

    @Test
    void has_no_such_channel_without_a_port() {
        gateway.run(context -> assertThat(context).doesNotHaveBean(Channel.class));
    }

    @Test
    void is_set_up_by_a_port() {
        gateway.withPropertyValues("yardlight.modem.port=/dev/ttyUSB2").run(context -> {
            assertThat(context.getBean(Channel.class).health())
                    .isEqualTo(new Health(Health.State.READY, "texts go out through the modem at /dev/ttyUSB2"));
            assertThat(context.getBean(Receiver.class).name()).isEqualTo("modem");
        });
    }

    @Test
    void takes_all_that_there_is_to_say() {
        gateway.withPropertyValues(
                        "yardlight.modem.port=/dev/ttyUSB2",
                        "yardlight.modem.speed=9600",
                        "yardlight.modem.pin=8899",
                        "yardlight.modem.number=+15755550100",
                        "yardlight.modem.service-centre=+15755550190",
                        "yardlight.modem.validity=1h",
                        "yardlight.modem.answer-timeout=7s",
                        "yardlight.modem.network-timeout=90s",
                        "yardlight.modem.poll=1m")
                .run(context -> {
                    var settings = context.getBean(PortSettings.class);
                    var modem = settings.settings(Path.of("home")).orElseThrow();
                    assertThat(modem.speed()).isEqualTo(9600);
                    assertThat(modem.number()).contains("+15755550100");
                    assertThat(modem.sim().pin()).contains("8899");
                    assertThat(modem.sim().centre()).contains("+15755550190");
                    assertThat(modem.sim().tried()).contains(Path.of("home", "modem-pin-tried"));
                    assertThat(modem.validity()).isEqualTo(Duration.ofHours(1));
                    assertThat(modem.timeouts().answer()).hasSeconds(7);
                    assertThat(modem.timeouts().network()).hasSeconds(90);
                    assertThat(modem.timeouts().poll()).hasSeconds(60);
                    assertThat(settings.toString()).doesNotContain("8899");
                    assertThat(modem.toString()).doesNotContain("8899");
                });
    }

    @Test
    void does_not_start_with_a_pin_that_is_none_and_does_not_repeat_it() {
        gateway.withPropertyValues("yardlight.modem.port=/dev/ttyUSB2", "yardlight.modem.pin=not-a-pin")
                .run(context -> assertThat(context.getStartupFailure())
                        .hasRootCauseInstanceOf(IllegalArgumentException.class)
                        .hasStackTraceContaining("modem PIN must be 4 to 8 digits")
                        .hasMessageNotContaining("not-a-pin"));
    }
}
