package yardlight.gateway.smpp;

import java.time.InstantSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import yardlight.channels.smpp.SmppChannel;

/** The channel over SMPP: a way to send, and what hears the answers to it. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(CentreSettings.class)
class SmppConfiguration {

    private static final Logger LOG = LoggerFactory.getLogger(SmppConfiguration.class);

    @Bean
    SmppChannel smppChannel(CentreSettings centre, InstantSource clock) {
        if (centre.isHalf()) {
            LOG.warn("SMPP is not set up: it needs both yardlight.smpp.host and yardlight.smpp.system-id");
        }
        return SmppChannel.of(centre.settings(), clock);
    }
}
