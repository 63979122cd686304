package yardlight.gateway.mail;

import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import yardlight.channels.Channel;
import yardlight.channels.mail.MailSettings;
import yardlight.channels.mail.SmtpChannel;

/** The two channels that go by SMTP. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties({ServerSettings.class, SenderSettings.class})
class MailConfiguration {

    private static final Logger LOG = LoggerFactory.getLogger(MailConfiguration.class);

    private final Optional<MailSettings> settings;

    MailConfiguration(ServerSettings server, SenderSettings sender) {
        Optional<String> from = sender.from().filter(address -> !address.isBlank());
        boolean host = server.host().filter(name -> !name.isBlank()).isPresent();
        this.settings = host ? from.map(address -> server.with(address, sender)) : Optional.empty();
        if (host != from.isPresent()) {
            LOG.warn("mail is not set up: it needs both spring.mail.host and yardlight.mail.from");
        }
    }

    @Bean
    Channel mailChannel() {
        return SmtpChannel.mail(settings);
    }

    @Bean
    Channel smsMailChannel() {
        return SmtpChannel.smsMail(settings);
    }
}
