package yardlight.gateway.http;

import java.util.Map;
import org.springframework.beans.factory.BeanRegistrar;
import org.springframework.beans.factory.BeanRegistry;
import org.springframework.boot.context.properties.bind.BindHandler;
import org.springframework.boot.context.properties.bind.Bindable;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.context.properties.bind.handler.NoUnboundElementsBindHandler;
import org.springframework.core.env.Environment;
import yardlight.channels.Channel;
import yardlight.channels.http.HttpChannel;
import yardlight.gateway.settings.SettingsTrouble;

/** One channel for each provider: how many there are only the properties know. */
final class HttpChannels implements BeanRegistrar {

    static final String PREFIX = "yardlight.http";

    @Override
    public void register(BeanRegistry registry, Environment environment) {
        Map<String, ProviderSettings> providers = Binder.get(environment)
                .bind(
                        PREFIX,
                        Bindable.mapOf(String.class, ProviderSettings.class),
                        new NoUnboundElementsBindHandler(BindHandler.DEFAULT))
                .orElse(Map.of());
        providers.forEach((name, settings) -> {
            // Made here and now: what is wrong with it is to show at the start.
            Channel channel = channel(name, settings);
            registry.registerBean("httpChannel." + name, Channel.class, bean -> bean.supplier(context -> channel));
        });
    }

    private static Channel channel(String name, ProviderSettings settings) {
        try {
            return HttpChannel.of(name, settings.read());
        } catch (IllegalArgumentException e) {
            throw new SettingsTrouble(PREFIX + "." + name + ".", e);
        }
    }
}
