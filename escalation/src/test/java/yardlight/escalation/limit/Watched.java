package yardlight.escalation.limit;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.reading.Reading;

/** One point that is read, and what is found of it: each finding that turned, as {@code +high} or {@code -high}. */
final class Watched {

    static final Instant START = Instant.parse("2026-11-25T08:00:00Z");

    private final Rules rules;
    private final List<String> turned = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private Gauge gauge = Gauge.unread(new Gauge.Key("mesa-9", "water-tank"));

    Watched(Rules rules) {
        this.rules = rules;
    }

    static Limits high(String limit, String deadband) {
        return new Limits(
                Optional.empty(),
                Optional.of(new BigDecimal(limit)),
                Optional.empty(),
                Optional.empty(),
                new BigDecimal(deadband));
    }

    /** Reads a value so long after the start. */
    Watched read(Duration after, double value) {
        Instant at = START.plus(after);
        Watching.Step step =
                Watching.take(gauge, rules, "mesa-9-box", new Reading("mesa-9", "water-tank", value, at), at);
        gauge = step.gauge();
        findings.addAll(step.findings());
        step.findings().stream()
                .filter(Finding::turned)
                .forEach(finding -> turned.add((finding.holds() ? "+" : "-") + finding.condition()));
        return this;
    }

    /** Reads values a minute apart, from so many minutes after the start on. */
    Watched minutes(int first, double... values) {
        for (int i = 0; i < values.length; i++) {
            read(Duration.ofMinutes(first + i), values[i]);
        }
        return this;
    }

    List<String> turned() {
        return turned;
    }

    List<Finding> findings() {
        return findings;
    }

    Gauge gauge() {
        return gauge;
    }
}
