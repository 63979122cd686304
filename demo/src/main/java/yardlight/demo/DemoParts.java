package yardlight.demo;

import java.net.InetAddress;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.boot.web.server.servlet.ConfigurableServletWebServerFactory;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import yardlight.demo.gateway.FreePort;
import yardlight.demo.night.Night;
import yardlight.demo.night.Timeline;
import yardlight.demo.stage.Stage;
import yardlight.demo.stage.StageSettings;
import yardlight.demo.stage.World;

/** Puts the parts together. */
@Configuration(proxyBeanMethods = false)
class DemoParts {

    @Bean
    World world() {
        return World.ofTheDemo();
    }

    @Bean
    Timeline timeline(World world) {
        return new Timeline(world.cast().zone(), System.out);
    }

    @Bean
    Stage stage(StageSettings settings, World world) {
        return new Stage(settings, world);
    }

    @Bean
    Night night(World world, Timeline timeline) {
        return new Night(world, timeline);
    }

    /** The page is for this machine only, and moves aside when somebody has its port. */
    @Bean
    WebServerFactoryCustomizer<ConfigurableServletWebServerFactory> pagePort(@Value("${server.port}") int wished) {
        return factory -> {
            factory.setAddress(InetAddress.getLoopbackAddress());
            factory.setPort(FreePort.orAnother(wished));
        };
    }
}
