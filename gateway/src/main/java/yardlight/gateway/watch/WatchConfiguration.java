package yardlight.gateway.watch;

import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.availability.ApplicationAvailability;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.health.actuate.endpoint.HealthEndpoint;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Lazy;
import yardlight.channels.Channel;
import yardlight.db.figures.Figures;
import yardlight.gateway.clock.Pace;
import yardlight.gateway.lane.LaneProbe;
import yardlight.gateway.settings.SettingsTrouble;
import yardlight.gateway.setup.SetupInForce;

/** Puts together what tells another gateway that this one does its work. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(WatchSettings.class)
class WatchConfiguration {

    /** As long as somebody at a door waits for the lane. */
    private static final Duration PATIENCE = Duration.ofSeconds(15);

    @Bean
    Watch watch(WatchSettings settings, ObjectProvider<Wellbeing> wellbeing, ApplicationAvailability availability) {
        Optional<Watcher> watcher = read(settings);
        return new Watch(
                watcher.map(to -> new Round(wellbeing.getObject(), new HttpOther(to), to.name(), to.every())),
                availability);
    }

    private static Optional<Watcher> read(WatchSettings settings) {
        try {
            return settings.read();
        } catch (IllegalArgumentException e) {
            throw new SettingsTrouble(WatchSettings.PREFIX, e, "docs/operating.md");
        }
    }

    @Bean
    @Lazy
    Wellbeing wellbeing(HealthEndpoint health, InTime inTime, WaysOut waysOut, LaneProbe lane) {
        return new Wellbeing(List.of(new Endpoints(health), inTime, waysOut, new Storing(lane, PATIENCE)));
    }

    @Bean
    InTime inTime(Figures figures, InstantSource clock, Pace pace) {
        return new InTime(now -> figures.overdue(now).oldest(), clock, pace);
    }

    @Bean
    WaysOut waysOut(SetupInForce inForce, ObjectProvider<Channel> channels) {
        return new WaysOut(inForce, channels.orderedStream().toList());
    }
}
