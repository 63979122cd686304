package yardlight.gateway.strip;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.Alarms;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.escalation.alarm.Alarm;
import yardlight.gateway.page.Tongue;

/** The curve of an alarm's point: an hour before it, and what came after as far as it belongs to it. */
@Component
public class HourBefore {

    private static final Duration BEFORE = Duration.ofHours(1);
    private static final Duration AFTER = Duration.ofMinutes(15);
    private static final Duration LONGEST_AFTER = Duration.ofHours(6);

    /**
     * The curve, and where it can be looked at more closely.
     *
     * @param page of the site's curves
     */
    public record Seen(Strip strip, String page) {}

    private final Alarms alarms;
    private final Strips strips;
    private final InstantSource clock;

    HourBefore(Alarms alarms, Strips strips, InstantSource clock) {
        this.alarms = alarms;
        this.strips = strips;
        this.clock = clock;
    }

    /** Empty when there is no such alarm, or nothing was read of its point in that time. */
    public Optional<Seen> of(String alarm, Tongue tongue) {
        return alarms.byId(alarm).map(RecordedAlarm::alarm).flatMap(one -> of(one, tongue));
    }

    private Optional<Seen> of(Alarm alarm, Tongue tongue) {
        String site = alarm.key().site();
        String point = alarm.key().point();
        return around(alarm, clock.instant())
                .flatMap(stretch -> strips.of(site, point, stretch, tongue)
                        .map(strip -> new Seen(strip, page(site, point, stretch))));
    }

    private static String page(String site, String point, Stretch stretch) {
        return "/sites/" + site + "/curves?points=" + point + "&span=" + stretch.length() + "&until=" + stretch.to();
    }

    /** Once an alarm is over, a quarter of an hour more belongs to it; six hours in all at most. */
    static Optional<Stretch> around(Alarm alarm, Instant now) {
        return alarm.occurredAt().map(at -> {
            Instant over = alarm.active() ? now : alarm.returnedAt().orElse(now).plus(AFTER);
            Instant end = List.of(over, at.plus(LONGEST_AFTER), now).stream()
                    .min(Instant::compareTo)
                    .orElse(now);
            return new Stretch(at.minus(BEFORE), end.isAfter(at) ? end : at.plusSeconds(60));
        });
    }
}
