package yardlight.gateway.push;

import java.net.URI;
import java.net.URISyntaxException;
import java.time.InstantSource;
import java.util.Optional;
import org.springframework.beans.factory.annotation.Value;
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
    PushDesk pushDesk(
            ServiceSettings settings,
            Secrets secrets,
            InstantSource clock,
            @Value("${yardlight.public-url:}") String publicUrl) {
        return new PushDesk(
                settings.areThere()
                        ? Optional.of(read(settings, keptKey(secrets, clock), host(publicUrl)))
                        : Optional.empty());
    }

    @Bean
    Channel pushChannel(PushDesk desk) {
        return PushChannel.of(desk.settings());
    }

    private static PushKey keptKey(Secrets secrets, InstantSource clock) {
        return PushKey.of(secrets.get("push", PushKey::fresh, clock.instant()));
    }

    private static PushSettings read(ServiceSettings settings, PushKey key, Optional<String> own) {
        try {
            return settings.with(key, own);
        } catch (IllegalArgumentException e) {
            throw new SettingsTrouble("yardlight.push.", e);
        }
    }

    /** Empty for what is no address: whoever makes links of it says so. */
    static Optional<String> host(String publicUrl) {
        try {
            return Optional.ofNullable(new URI(publicUrl.strip()).getHost());
        } catch (URISyntaxException e) {
            return Optional.empty();
        }
    }
}
