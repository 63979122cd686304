package yardlight.gateway.dispatch;

import io.micrometer.core.instrument.MeterRegistry;
import java.time.InstantSource;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import yardlight.channels.Channel;
import yardlight.db.figures.Figures;
import yardlight.db.outbox.DownCarriers;
import yardlight.db.outbox.Outbox;
import yardlight.gateway.lane.CurrentSetup;
import yardlight.gateway.lane.Intake;

/** Puts the dispatcher together. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(DispatchSettings.class)
@Import(Sending.class)
class DispatchConfiguration {

    @Bean
    DispatchMeters dispatchMeters(MeterRegistry registry, Figures figures, InstantSource clock) {
        return new DispatchMeters(registry, figures::queuedNotices, clock);
    }

    @Bean
    Channels channelsByName(ObjectProvider<Channel> channels) {
        return Channels.of(channels.orderedStream().toList());
    }

    @Bean
    Carriers carriers(Channels channels, Intake intake, DownCarriers known, InstantSource clock) {
        return new Carriers(channels.byName().keySet(), intake, known::channels, clock);
    }

    @Bean
    Lines lines(CurrentSetup setup) {
        return new Lines(setup::setup);
    }

    @Bean
    ReceiptTimes receiptTimes(DispatchSettings settings) {
        return new ReceiptTimes(settings.receiptWithin());
    }

    @Bean
    Recorder recorder(Intake intake, Outbox outbox) {
        return new Recorder(intake, outbox);
    }

    @Bean
    Dispatcher dispatcher(Sending sending, Intake intake, DispatchSettings settings) {
        return new Dispatcher(sending, new Late(sending, intake, settings.takenWithin()), settings);
    }
}
