package yardlight.escalation.heartbeat;

import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A sign of life, with whatever the box chose to say of itself.
 *
 * @param uptime since its last start
 * @param feeds which power supplies are on
 * @param battery in volts
 * @param signal in dBm
 * @param at the box's own time
 */
public record Heartbeat(
        Optional<Duration> uptime,
        Map<String, Boolean> feeds,
        Optional<Double> battery,
        Optional<Double> signal,
        Optional<Instant> at) {

    public static final Heartbeat BARE =
            new Heartbeat(Optional.empty(), Map.of(), Optional.empty(), Optional.empty(), Optional.empty());

    public Heartbeat {
        feeds = Collections.unmodifiableMap(new TreeMap<>(feeds));
    }

    /** All that is known of the box when it said this after the other. Its time is only ever that of one heartbeat. */
    Heartbeat after(Heartbeat earlier) {
        var all = new TreeMap<>(earlier.feeds);
        all.putAll(feeds);
        return new Heartbeat(
                uptime.or(() -> earlier.uptime),
                all,
                battery.or(() -> earlier.battery),
                signal.or(() -> earlier.signal),
                at);
    }
}
