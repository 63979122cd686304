package yardlight.gateway.setup;

import java.time.Duration;
import java.util.Optional;
import yardlight.gateway.document.Fields;

/** Durations within bounds, both included. */
final class Spans {

    private Spans() {}

    static Optional<Duration> between(Fields fields, String name, Duration least, Duration most) {
        Optional<Duration> said = fields.duration(name);
        Optional<Duration> within = said.filter(span -> span.compareTo(least) >= 0 && span.compareTo(most) <= 0);
        if (said.isPresent() && within.isEmpty()) {
            fields.fault(name, "must be from " + least + " to " + most);
        }
        return within;
    }
}
