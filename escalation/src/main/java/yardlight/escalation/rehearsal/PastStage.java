package yardlight.escalation.rehearsal;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Nuisance;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;

/** A setup on which past nights can be played: boxes that speak when they spoke, and no delay a second time. */
final class PastStage {

    private static final String BOX = "-past-";

    private PastStage() {}

    /** The box that speaks for a site. */
    static String box(String site) {
        return BOX + site;
    }

    static Setup of(Setup setup, Past past) {
        List<Box> boxes = new ArrayList<>(setup.boxes().values());
        setup.sites()
                .keySet()
                .forEach(site -> boxes.add(new Box(
                        box(site), site, Optional.empty(), Optional.empty(), true, Optional.empty(), Duration.ZERO)));
        Map<String, Point> points = new LinkedHashMap<>();
        setup.points().forEach(point -> points.put(point.site() + "/" + point.id(), point));
        for (PastDeed deed : past.deeds()) {
            AlarmKey key = deed.key();
            points.computeIfAbsent(key.site() + "/" + key.point(), any -> Point.unknown(key.point(), key.site()));
        }
        return new Setup(
                List.copyOf(setup.sites().values()),
                boxes,
                points.values().stream()
                        .map(point -> point.with(over(point.timing())))
                        .toList(),
                List.copyOf(setup.contacts().values()),
                List.copyOf(setup.rosters().values()),
                List.copyOf(setup.ladders().values()));
    }

    /** The delays, and how long chatter takes to settle, are in what is played already. */
    private static Timing over(Timing timing) {
        Nuisance.Numbers numbers = timing.nuisance();
        return new Timing(
                Duration.ZERO,
                Duration.ZERO,
                timing.latching(),
                timing.realarm(),
                new Nuisance.Numbers(
                        numbers.count(), numbers.within(), Duration.ZERO, numbers.fleeting(), numbers.stale()));
    }
}
