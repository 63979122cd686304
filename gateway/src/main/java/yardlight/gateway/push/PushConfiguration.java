package yardlight.gateway.push;

import java.time.InstantSource;
import java.util.Optional;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import yardlight.channels.Channel;
import yardlight.channels.push.PushChannel;
import yardlight.channels.push.PushKey;
import yardlight.channels.push.PushSettings;
import yardlight.db.secret.Secrets;
import yardlight.gateway.settings.SettingsTrouble;

/** The channel that goes to browsers. Its key is made once and shared by all gateways of one database. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(ServiceSettings.class)
class PushConfiguration {

    @Bean
    PushDesk pushDesk(ServiceSettings settings, Secrets secrets, InstantSource clock) {
        return new PushDesk(settings.areThere() ? Optional.of(read(settings, secrets, clock)) : Optional.empty());
    }

    @Bean
    Channel pushChannel(PushDesk desk) {
        return PushChannel.of(desk.settings());
    }

    private static PushSettings read(ServiceSettings settings, Secrets secrets, InstantSource clock) {
        try {
            return settings.with(PushKey.of(secrets.get("push", PushKey::fresh, clock.instant())));
        } catch (IllegalArgumentException e) {
            throw new SettingsTrouble("yardlight.push.", e);
        }
    }
}
