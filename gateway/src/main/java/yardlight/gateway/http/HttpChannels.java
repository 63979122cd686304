package yardlight.gateway.http;

import java.util.Map;
import java.util.Optional;
import org.springframework.beans.factory.BeanRegistrar;
import org.springframework.beans.factory.BeanRegistry;
import org.springframework.boot.context.properties.bind.BindHandler;
import org.springframework.boot.context.properties.bind.Bindable;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.context.properties.bind.handler.NoUnboundElementsBindHandler;
import org.springframework.core.env.Environment;
import yardlight.channels.Channel;
import yardlight.channels.http.HttpChannel;
import yardlight.channels.http.Relay;
import yardlight.gateway.settings.SettingsTrouble;

/** One channel for each provider, and the relays that sites are shut in by: how many there are only the properties know. */
final class HttpChannels implements BeanRegistrar {

    static final String PREFIX = "yardlight.http";
    static final String RELAYS = "yardlight.relay";

    @Override
    public void register(BeanRegistry registry, Environment environment) {
        bound(environment, PREFIX).forEach((name, settings) -> {
            // Made here and now: what is wrong with it is to show at the start.
            Channel channel = channel(name, settings);
            registry.registerBean("httpChannel." + name, Channel.class, bean -> bean.supplier(context -> channel));
        });
        bound(environment, RELAYS).forEach((name, settings) -> {
            Optional<Relay> relay = relay(name, settings);
            relay.ifPresent(
                    one -> registry.registerBean("relay." + name, Relay.class, bean -> bean.supplier(context -> one)));
        });
    }

    private static Map<String, ProviderSettings> bound(Environment environment, String prefix) {
        return Binder.get(environment)
                .bind(
                        prefix,
                        Bindable.mapOf(String.class, ProviderSettings.class),
                        new NoUnboundElementsBindHandler(BindHandler.DEFAULT))
                .orElse(Map.of());
    }

    private static Optional<Relay> relay(String name, ProviderSettings settings) {
        try {
            return settings.read().map(read -> Relay.of(name, read));
        } catch (IllegalArgumentException e) {
            throw new SettingsTrouble(RELAYS + "." + name + ".", e);
        }
    }

    private static Channel channel(String name, ProviderSettings settings) {
        try {
            return HttpChannel.of(name, settings.read());
        } catch (IllegalArgumentException e) {
            throw new SettingsTrouble(PREFIX + "." + name + ".", e);
        }
    }
}
