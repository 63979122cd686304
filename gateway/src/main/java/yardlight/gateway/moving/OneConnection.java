package yardlight.gateway.moving;

import java.util.Map;
import org.springframework.boot.EnvironmentPostProcessor;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.context.config.ConfigDataEnvironmentPostProcessor;
import org.springframework.core.Ordered;
import org.springframework.core.env.ConfigurableEnvironment;
import org.springframework.core.env.MapPropertySource;

/** A gateway that moves out has one connection, so that any other one to its database is somebody else's. */
final class OneConnection implements EnvironmentPostProcessor, Ordered {

    @Override
    public void postProcessEnvironment(ConfigurableEnvironment environment, SpringApplication application) {
        if (!environment.getProperty(MovingAtStart.OUT, "").isBlank()) {
            environment
                    .getPropertySources()
                    .addFirst(new MapPropertySource(
                            "yardlight moving out", Map.of("spring.datasource.hikari.maximum-pool-size", "1")));
        }
    }

    @Override
    public int getOrder() {
        return ConfigDataEnvironmentPostProcessor.ORDER + 1;
    }
}
