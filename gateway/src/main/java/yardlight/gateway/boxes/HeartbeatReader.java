package yardlight.gateway.boxes;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.gateway.document.Fields;
import yardlight.gateway.posting.When;

/** Reads what a box says of itself. Fields that it does not know are left alone. */
final class HeartbeatReader {

    /** With this name its alarm, {@code power-} and the feed, is still an id. */
    private static final int LONGEST_FEED = 58;

    private static final int MOST_FEEDS = 32;
    private static final int MOST_SECONDS = 999_999_999;

    private HeartbeatReader() {}

    static Heartbeat read(Fields said, When when) {
        Optional<Duration> uptime = uptime(said);
        Map<String, Boolean> feeds =
                said.object("feeds").map(named -> feeds(said, named)).orElse(Map.of());
        Optional<Double> battery = said.number("battery").map(Number::doubleValue);
        Optional<Double> signal = said.number("signal").map(Number::doubleValue);
        return new Heartbeat(
                uptime, feeds, battery, signal, Optional.of(when.at()).filter(at -> when.declared()));
    }

    /** In whole seconds: what a box says beyond them is of no use. */
    private static Optional<Duration> uptime(Fields said) {
        Optional<BigDecimal> seconds = said.number("uptime");
        if (seconds.filter(HeartbeatReader::impossible).isPresent()) {
            said.fault("uptime", "must be seconds from 0 to " + MOST_SECONDS);
        }
        return seconds.filter(some -> !impossible(some)).map(some -> Duration.ofSeconds(some.longValue()));
    }

    private static boolean impossible(BigDecimal seconds) {
        return seconds.signum() < 0 || seconds.compareTo(BigDecimal.valueOf(MOST_SECONDS)) > 0;
    }

    private static Map<String, Boolean> feeds(Fields said, Fields named) {
        var feeds = new TreeMap<String, Boolean>();
        if (named.names().size() > MOST_FEEDS) {
            said.fault("feeds", "must be at most " + MOST_FEEDS + " feeds");
            return feeds;
        }
        for (String name : named.names()) {
            if (name.length() > LONGEST_FEED || !AlarmKey.ID.matcher(name).matches()) {
                named.fault(name, "must be named with at most " + LONGEST_FEED + " of a-z, 0-9 and -");
            }
            named.flag(name).ifPresent(on -> feeds.put(name, on));
        }
        return feeds;
    }
}
