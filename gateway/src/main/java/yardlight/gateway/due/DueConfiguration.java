package yardlight.gateway.due;

import io.micrometer.core.instrument.MeterRegistry;
import java.time.InstantSource;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import yardlight.db.due.Dues;
import yardlight.gateway.clock.Pace;
import yardlight.gateway.lane.Intake;

/** Puts the loop together. */
@Configuration(value = "dueLoopConfiguration", proxyBeanMethods = false)
@EnableConfigurationProperties(DueSettings.class)
class DueConfiguration {

    @Bean
    Sweep sweep(Dues dues, Intake intake, InstantSource clock, MeterRegistry registry) {
        return new Sweep(dues, intake, clock, registry);
    }

    @Bean
    DueLoop dueLoop(Sweep sweep, InstantSource clock, Pace pace, DueSettings settings) {
        return new DueLoop(sweep, clock, pace, settings);
    }
}
