package yardlight.gateway.health;

import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.health.contributor.Health;
import org.springframework.boot.health.contributor.HealthIndicator;
import org.springframework.stereotype.Component;

/**
 * Says in the readiness details how much room the home has left, and warns in the log before it is gone. Never down: as
 * long as there is room, what the boxes report is taken.
 */
@Component("space")
class SpaceHealth implements HealthIndicator {

    private static final Logger LOG = LoggerFactory.getLogger(SpaceHealth.class);
    private static final long MEBIBYTE = 1024L * 1024;

    /** A flood of a night and a backup fit into it several times. */
    static final long LITTLE = 500 * MEBIBYTE;

    private final LongSupplier free;
    private final AtomicBoolean warned = new AtomicBoolean();

    @Autowired
    SpaceHealth(@Value("${yardlight.home}") String home) {
        this(Path.of(home).toFile()::getUsableSpace);
    }

    SpaceHealth(LongSupplier free) {
        this.free = free;
    }

    @Override
    public Health health() {
        long left = free.getAsLong();
        boolean little = left < LITTLE;
        if (little && !warned.getAndSet(true)) {
            LOG.warn("only {} MiB are free where the database is; when none is, nothing can be taken", left / MEBIBYTE);
        }
        if (!little) {
            warned.set(false);
        }
        var health = Health.up().withDetail("free", left / MEBIBYTE + " MiB");
        return (little ? health.withDetail("warning", "make room soon") : health).build();
    }
}
