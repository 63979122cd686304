package yardlight.gateway.clock;

import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/**
 * Gives the gateway its time: the time of day to the millisecond, which is all that anybody reads, and which both
 * databases keep as it is.
 */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(ClockSettings.class)
class ClockConfiguration {

    private static final Logger LOG = LoggerFactory.getLogger(ClockConfiguration.class);

    @Bean
    InstantSource clock(ClockSettings settings) {
        if (settings.real()) {
            return new SteadyClock(ClockConfiguration::now, System::nanoTime);
        }
        Instant start = settings.start().orElseGet(ClockConfiguration::now);
        LOG.warn(
                "the clock is set for a demonstration: it starts at {} and runs {} times as fast as time does",
                start,
                settings.speed());
        return new DemoClock(start, settings.speed(), System::nanoTime);
    }

    @Bean
    Pace pace(InstantSource clock) {
        return clock instanceof DemoClock demo ? demo : Pace.REAL;
    }

    @Bean
    Leap leap(InstantSource clock) {
        return clock instanceof SteadyClock steady ? steady::last : Leap.NEVER;
    }

    @Bean
    Steps steps(InstantSource clock) {
        return clock instanceof SteadyClock steady ? steady : Steps.NONE;
    }

    private static Instant now() {
        return Instant.now().truncatedTo(ChronoUnit.MILLIS);
    }
}
