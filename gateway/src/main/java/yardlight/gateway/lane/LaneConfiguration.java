package yardlight.gateway.lane;

import io.micrometer.core.instrument.MeterRegistry;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import javax.sql.DataSource;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import yardlight.db.journal.Journal;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;
import yardlight.gateway.clock.Leap;
import yardlight.gateway.clock.Steps;

/** Puts the lane together. */
@Configuration(proxyBeanMethods = false)
class LaneConfiguration {

    /** Longer than a transaction takes, and far shorter than anybody notices. */
    private static final Duration COMPANY = Duration.ofMillis(8);

    @Bean
    CurrentSetup currentSetup(ObjectProvider<SetupSource> source) {
        return new CurrentSetup(source.getIfAvailable(() -> document -> Setup.EMPTY));
    }

    @Bean
    JournalLane lane(InstantSource clock, Leap leap) {
        Instant started = clock.instant();
        return new JournalLane(COMPANY, () -> leap.last().orElse(started));
    }

    @Bean
    ClockLines clockLines(Steps steps, LogBook book) {
        return new ClockLines(steps, book);
    }

    @Bean
    Journal journal(DataSource source) {
        return new Journal(source);
    }

    @Bean
    LaneMeters laneMeters(MeterRegistry registry, JournalLane lane) {
        return new LaneMeters(registry, lane.queue());
    }

    @Bean
    Batch batch(Journal journal, CurrentSetup current, ObjectProvider<Links> links, InstantSource clock) {
        return new Batch(journal, current, links.getIfAvailable(() -> Links.NONE), clock);
    }

    @Bean
    LaneThread laneThread(JournalLane lane, Batch batch, LaneMeters meters, ObjectProvider<Aftermath> aftermaths) {
        return new LaneThread(
                lane, batch, meters, List.copyOf(aftermaths.orderedStream().toList()));
    }
}
