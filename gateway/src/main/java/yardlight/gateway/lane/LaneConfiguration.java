package yardlight.gateway.lane;

import io.micrometer.core.instrument.MeterRegistry;
import java.time.Duration;
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
    Hearing hearing(InstantSource clock, Leap leap) {
        return new Hearing(clock, leap);
    }

    @Bean
    JournalLane lane(Hearing hearing) {
        return new JournalLane(COMPANY, hearing.started());
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
    Batch batch(
            Journal journal, CurrentSetup current, ObjectProvider<Links> links, InstantSource clock, Hearing hearing) {
        return new Batch(journal, current, links.getIfAvailable(() -> Links.NONE), clock, hearing);
    }

    @Bean
    LaneThread laneThread(
            JournalLane lane, Batch batch, Hearing hearing, LaneMeters meters, ObjectProvider<Aftermath> aftermaths) {
        return new LaneThread(
                lane,
                batch,
                hearing,
                meters,
                List.copyOf(aftermaths.orderedStream().toList()));
    }
}
