package yardlight.gateway.strip;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.Alarms;
import yardlight.escalation.alarm.Alarm;
import yardlight.gateway.page.Telling;

/** The alarms of points, for a drawing. */
@Component
public class Troubles {

    /** On a sheet a few hundred wide nobody tells more of them apart. */
    private static final int MOST = 200;

    private final Alarms alarms;

    Troubles(Alarms alarms) {
        this.alarms = alarms;
    }

    /** Those that held at some moment of the stretch, newest first; at most {@value #MOST}. */
    public List<Trouble> of(String site, Collection<String> points, Stretch stretch, Telling telling) {
        return alarms.during(site, stretch.from(), stretch.to(), MOST).stream()
                .filter(alarm -> points.contains(alarm.key().point()))
                .map(alarm -> trouble(alarm, telling))
                .toList();
    }

    private static Trouble trouble(Alarm alarm, Telling telling) {
        Instant now = telling.clock().now();
        Instant from = alarm.occurredAt().orElse(now);
        Instant to = alarm.active() ? now : alarm.returnedAt().orElse(now);
        String words = telling.tongue()
                .say("strip.trouble", telling.subject(alarm), telling.clock().read(from));
        return new Trouble(alarm.id(), alarm.key().point(), from, to.isBefore(from) ? from : to, words);
    }
}
