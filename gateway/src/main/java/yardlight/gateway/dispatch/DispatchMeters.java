package yardlight.gateway.dispatch;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import java.time.Duration;
import java.time.InstantSource;
import java.util.function.Supplier;
import yardlight.channels.Attempt;
import yardlight.db.figures.Figures;

/** What the dispatcher shows of itself. */
final class DispatchMeters {

    private final MeterRegistry registry;

    DispatchMeters(MeterRegistry registry, Supplier<Figures.Waiting> queued, InstantSource clock) {
        this.registry = registry;
        Gauge.builder("yardlight.notices.queued", () -> queued.get().count())
                .description("Notices that no carrier has taken yet")
                .register(registry);
        Gauge.builder("yardlight.notices.oldest", () -> age(queued.get(), clock))
                .description("How long the first of them has been waiting")
                .baseUnit("seconds")
                .register(registry);
    }

    void sent(String channel, Attempt.Outcome outcome) {
        registry.counter("yardlight.notices.sent", "channel", channel, "outcome", outcome.word())
                .increment();
    }

    private static double age(Figures.Waiting waiting, InstantSource clock) {
        return waiting.oldest()
                .map(since -> Duration.between(since, clock.instant()).toMillis() / 1000.0)
                .orElse(0.0);
    }
}
