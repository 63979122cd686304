package yardlight.demo;

import java.net.InetAddress;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.boot.web.server.servlet.ConfigurableServletWebServerFactory;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import yardlight.demo.boxes.Places;
import yardlight.demo.cast.Cast;
import yardlight.demo.gateway.FreePort;
import yardlight.demo.gateway.GatewayClock;
import yardlight.demo.night.Night;
import yardlight.demo.night.Timeline;
import yardlight.demo.phone.Phones;
import yardlight.demo.stage.Stage;
import yardlight.demo.stage.StageSettings;

/** Puts the parts together. */
@Configuration(proxyBeanMethods = false)
class DemoParts {

    @Bean
    Cast cast() {
        return Cast.ofTheDemo();
    }

    @Bean
    GatewayClock gatewayClock() {
        return new GatewayClock();
    }

    @Bean
    Places places(Cast cast, GatewayClock clock) {
        return new Places(cast, clock);
    }

    @Bean
    Phones phones(Cast cast, GatewayClock clock) {
        return new Phones(cast, clock);
    }

    @Bean
    Timeline timeline(Cast cast) {
        return new Timeline(cast.zone(), System.out);
    }

    @Bean
    Stage stage(StageSettings settings, Cast cast, Places places, Phones phones, GatewayClock clock) {
        return new Stage(settings, cast, places, phones, clock);
    }

    @Bean
    Night night(Cast cast, Places places, Phones phones, GatewayClock clock, Timeline timeline) {
        return new Night(places, phones, clock, timeline, cast.zone());
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
