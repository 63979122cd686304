package yardlight.gateway.lane;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.DistributionSummary;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import java.util.Collection;
import java.util.function.Supplier;

/** What the lane shows of itself. */
final class LaneMeters {

    private final DistributionSummary batch;
    private final Timer write;
    private final Counter failed;

    LaneMeters(MeterRegistry registry, Collection<?> queue) {
        Gauge.builder("yardlight.lane.queue", queue, Collection::size)
                .description("Things handed in that no transaction has taken yet")
                .register(registry);
        batch = DistributionSummary.builder("yardlight.lane.batch")
                .description("Things in one transaction")
                .register(registry);
        write = Timer.builder("yardlight.lane.write")
                .description("Deciding and storing one transaction, the disk's answer included")
                .register(registry);
        failed = Counter.builder("yardlight.lane.failed")
                .description("Transactions that the database did not store")
                .register(registry);
    }

    <T> T write(int size, Supplier<T> work) {
        batch.record(size);
        return write.record(work);
    }

    void failed() {
        failed.increment();
    }
}
