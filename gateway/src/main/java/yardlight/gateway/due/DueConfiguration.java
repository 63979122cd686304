package yardlight.gateway.due;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.MeterBinder;
import java.time.InstantSource;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import yardlight.db.due.Dues;
import yardlight.db.figures.Figures;
import yardlight.gateway.clock.Pace;
import yardlight.gateway.coverage.Coverages;
import yardlight.gateway.coverage.Outlook;
import yardlight.gateway.lane.Intake;

/** Puts the loop together. */
@Configuration(value = "dueLoopConfiguration", proxyBeanMethods = false)
@EnableConfigurationProperties(DueSettings.class)
class DueConfiguration {

    @Bean
    Stimuli stimuli(Intake intake, ObjectProvider<Coverages> coverages) {
        return new Stimuli(
                intake,
                () -> coverages.stream().findFirst().flatMap(Coverages::outlook).flatMap(Outlook::worst));
    }

    @Bean
    Sweep sweep(Dues dues, Stimuli stimuli, InstantSource clock, MeterRegistry registry) {
        return new Sweep(dues, stimuli, clock, registry);
    }

    @Bean
    DueLoop dueLoop(Sweep sweep, InstantSource clock, Pace pace, DueSettings settings) {
        return new DueLoop(sweep, clock, pace, settings);
    }

    @Bean
    MeterBinder overdue(Figures figures, InstantSource clock) {
        return registry -> Gauge.builder(
                        "yardlight.due.waiting",
                        figures,
                        one -> one.overdue(clock.instant()).count())
                .description("Things that are due and not done yet")
                .register(registry);
    }
}
