package yardlight.gateway.modem;

import java.nio.file.Path;
import java.time.InstantSource;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import yardlight.channels.modem.ModemChannel;

/** The channel over a modem: a way to send, and what hears the answers to it. */
@Configuration(proxyBeanMethods = false)
@ConditionalOnProperty("yardlight.modem.port")
@EnableConfigurationProperties(PortSettings.class)
class ModemConfiguration {

    @Bean
    ModemChannel modemChannel(PortSettings modem, InstantSource clock, @Value("${yardlight.home}") String home) {
        return ModemChannel.of(modem.settings(Path.of(home)), clock);
    }
}
