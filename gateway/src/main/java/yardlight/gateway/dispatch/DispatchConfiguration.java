package yardlight.gateway.dispatch;

import io.micrometer.core.instrument.MeterRegistry;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Semaphore;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import yardlight.channels.Channel;
import yardlight.db.figures.Figures;
import yardlight.db.outbox.Outbox;
import yardlight.gateway.lane.CurrentSetup;
import yardlight.gateway.lane.Intake;

/** Puts the dispatcher together: one counter for each channel there is. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(DispatchSettings.class)
class DispatchConfiguration {

    @Bean
    DispatchMeters dispatchMeters(MeterRegistry registry, Figures figures, InstantSource clock) {
        return new DispatchMeters(registry, figures, clock);
    }

    @Bean
    Dispatcher dispatcher(
            List<Channel> channels,
            Outbox outbox,
            Intake intake,
            CurrentSetup setup,
            InstantSource clock,
            DispatchMeters meters,
            DispatchSettings settings) {
        var byName = new LinkedHashMap<String, Channel>();
        channels.forEach(channel -> byName.put(channel.name(), channel));
        var bell = new Semaphore(0);
        var recorder = new Recorder(intake, outbox);
        var lines = new Lines(setup);
        var sending = new Sending(byName, lines, outbox, recorder, clock, meters);
        Map<String, Counter> counters = new LinkedHashMap<>();
        byName.keySet()
                .forEach(name -> counters.put(
                        name, new Counter(name, settings.workers(), outbox, sending, clock, bell::release)));
        var stranded = new Stranded(outbox, lines, sending, clock);
        return new Dispatcher(byName, counters, stranded, recorder, settings, bell);
    }
}
