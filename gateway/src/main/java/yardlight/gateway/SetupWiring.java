package yardlight.gateway;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import yardlight.gateway.lane.CurrentSetup;
import yardlight.gateway.lane.SetupSource;
import yardlight.gateway.setup.SetupInForce;
import yardlight.gateway.setup.SetupReader;
import yardlight.gateway.setup.SetupText;

/** Lets the lane read setups and the doors see the one that holds, without either knowing the other. */
@Configuration(proxyBeanMethods = false)
class SetupWiring {

    @Bean
    SetupSource setupSource(SetupReader reader) {
        return document -> reader.read(SetupText.document(document));
    }

    @Bean
    SetupInForce setupInForce(CurrentSetup current) {
        return current::setup;
    }
}
