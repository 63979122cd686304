package yardlight.escalation.heartbeat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** One box over time: what it sends, and the alarms about its silence. */
final class Played {

    private final Patience patience;
    private Instant now = Instant.parse("2026-11-25T02:00:00Z");
    private BoxWatch watch = new BoxWatch("box", now, Optional.empty(), false, Heartbeat.BARE);
    private Instant open = Instant.EPOCH;
    private int alarms;

    Played(Patience patience) {
        this.patience = patience;
    }

    /** A heartbeat, so long after whatever was last; before it the deadline passes if it is earlier. */
    Played beat(Duration later) {
        return heard(later, Optional.of(Heartbeat.BARE));
    }

    Played beats(int times, Duration apart) {
        for (int i = 0; i < times; i++) {
            beat(apart);
        }
        return this;
    }

    /** A heartbeat of a box that says for how long it has been running. */
    Played running(Duration later, Duration uptime) {
        return heard(
                later,
                Optional.of(new Heartbeat(
                        Optional.of(uptime),
                        Heartbeat.BARE.feeds(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty())));
    }

    Played event(Duration later) {
        return heard(later, Optional.empty());
    }

    /** The gateway is away for as long: no deadline passes, and the box's patience begins anew. */
    Played away(Duration length) {
        now = now.plus(length);
        open = now;
        watch = watch.with(Optional.of(now.plus(patience())));
        return this;
    }

    Played clockBack(Duration step) {
        now = now.minus(step);
        watch = watch.with(Optional.of(now.plus(patience())));
        return this;
    }

    private Played heard(Duration later, Optional<Heartbeat> said) {
        now = now.plus(later);
        if (watch.deadline().filter(at -> !at.isAfter(now)).isPresent()) {
            watch = watch.gone(Path.site("mesa-9"));
            alarms++;
        }
        Arrivals arrivals = patience.heard(watch, said, now, open);
        watch = watch.with(arrivals).heard(now, Optional.of(patience.after(arrivals)), said.orElse(watch.last()));
        return this;
    }

    Duration patience() {
        return patience.after(watch.arrivals());
    }

    Arrivals arrivals() {
        return watch.arrivals();
    }

    int alarms() {
        return alarms;
    }
}
