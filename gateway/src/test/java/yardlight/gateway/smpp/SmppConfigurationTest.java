package yardlight.gateway.smpp;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.InstantSource;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.runner.ApplicationContextRunner;
import yardlight.channels.Channel;
import yardlight.channels.Health;
import yardlight.channels.Receiver;

class SmppConfigurationTest {

    private final ApplicationContextRunner gateway = new ApplicationContextRunner()
            .withUserConfiguration(SmppConfiguration.class)
            .withBean(InstantSource.class, () -> InstantSource.fixed(Instant.EPOCH));

    @Test
    void has_the_channel_before_there_is_a_message_centre() {
        gateway.run(context -> {
            assertThat(context.getBean(Channel.class).health().state()).isEqualTo(Health.State.NOT_CONFIGURED);
            assertThat(context.getBean(Receiver.class).name()).isEqualTo("smpp");
        });
    }

    @Test
    void is_set_up_by_a_host_and_an_account() {
        gateway.withPropertyValues("yardlight.smpp.host=smsc.example", "yardlight.smpp.system-id=mesa")
                .run(context -> assertThat(context.getBean(Channel.class).health())
                        .isEqualTo(new Health(Health.State.READY, "texts go out through smsc.example:3550")));
    }

    @Test
    void takes_all_that_a_provider_may_ask_for() {
        gateway.withPropertyValues(
                        "yardlight.smpp.host=smsc.example",
                        "yardlight.smpp.port=2776",
                        "yardlight.smpp.system-id=mesa",
                        "yardlight.smpp.password=secret08",
                        "yardlight.smpp.system-type=VMA",
                        "yardlight.smpp.from=+15755550100",
                        "yardlight.smpp.tls=false",
                        "yardlight.smpp.window=1",
                        "yardlight.smpp.response-timeout=20s",
                        "yardlight.smpp.enquire-link=15s")
                .run(context -> {
                    var settings = context.getBean(CentreSettings.class);
                    var centre = settings.settings().orElseThrow();
                    assertThat(centre.port()).isEqualTo(2776);
                    assertThat(centre.tls()).isFalse();
                    assertThat(centre.login().systemType()).isEqualTo("VMA");
                    assertThat(centre.from()).contains("+15755550100");
                    assertThat(centre.window()).isOne();
                    assertThat(centre.timeouts().response()).hasSeconds(20);
                    assertThat(centre.timeouts().quiet()).hasSeconds(15);
                    assertThat(settings.toString()).doesNotContain("secret08");
                    assertThat(centre.toString()).doesNotContain("secret08");
                });
    }

    @Test
    void does_not_start_with_a_login_that_cannot_be_written() {
        gateway.withPropertyValues(
                        "yardlight.smpp.host=smsc.example",
                        "yardlight.smpp.system-id=mesa",
                        "yardlight.smpp.password=far-too-long")
                .run(context -> assertThat(context.getStartupFailure())
                        .hasRootCauseInstanceOf(IllegalArgumentException.class)
                        .hasStackTraceContaining("SMPP password must be at most 8")
                        .hasMessageNotContaining("far-too-long"));
    }

    @Test
    void is_not_set_up_by_half_of_it() {
        gateway.withPropertyValues("yardlight.smpp.host=smsc.example")
                .run(context -> assertThat(
                                context.getBean(Channel.class).health().state())
                        .isEqualTo(Health.State.NOT_CONFIGURED));
    }
}
