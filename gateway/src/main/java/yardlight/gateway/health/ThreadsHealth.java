package yardlight.gateway.health;

import java.time.Duration;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.health.contributor.Health;
import org.springframework.boot.health.contributor.HealthIndicator;
import org.springframework.stereotype.Component;
import yardlight.gateway.clock.Pulse;
import yardlight.gateway.clock.Pulsing;

/** Down when a thread that everything depends on has ended or stands still: only a restart helps then. */
@Component("threads")
class ThreadsHealth implements HealthIndicator {

    /** Longer than any transaction and any wait for a connection. */
    private static final Duration MOST_STILL = Duration.ofSeconds(60);

    private final ObjectProvider<Pulsing> threads;

    ThreadsHealth(ObjectProvider<Pulsing> threads) {
        this.threads = threads;
    }

    @Override
    public Health health() {
        var health = Health.up();
        threads.orderedStream().map(Pulsing::pulse).forEach(pulse -> add(pulse, health));
        return health.build();
    }

    private static void add(Pulse pulse, Health.Builder health) {
        pulse.trouble(MOST_STILL).ifPresent(trouble -> health.down().withDetail(pulse.name(), trouble));
    }
}
