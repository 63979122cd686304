package yardlight.gateway.clock;

import java.time.Instant;
import java.util.Optional;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * For demonstrations only.
 *
 * @param speed how many seconds pass in one; 1 is the time of day
 * @param start what time it is when the gateway starts; empty is the time of day
 */
@ConfigurationProperties("yardlight.clock")
record ClockSettings(@DefaultValue("1") double speed, Optional<Instant> start) {

    ClockSettings {
        if (!(speed > 0) || Double.isInfinite(speed)) {
            throw new IllegalArgumentException("yardlight.clock.speed must be positive: " + speed);
        }
    }

    boolean real() {
        return speed == 1 && start.isEmpty();
    }
}
