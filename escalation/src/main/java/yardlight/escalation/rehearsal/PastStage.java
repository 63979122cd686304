package yardlight.escalation.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
        Set<String> hasty = hasty(past, points);
        return new Setup(
                List.copyOf(setup.sites().values()),
                boxes,
                points.entrySet().stream()
                        .map(one -> one.getValue().with(over(one.getValue().timing(), hasty.contains(one.getKey()))))
                        .toList(),
                List.copyOf(setup.contacts().values()),
                List.copyOf(setup.rosters().values()),
                List.copyOf(setup.ladders().values()));
    }

    /** The points of which an alarm was back sooner than their on-delay allows by now. */
    private static Set<String> hasty(Past past, Map<String, Point> points) {
        var hasty = new HashSet<String>();
        var ended = new HashMap<AlarmKey, Instant>();
        for (PastDeed deed : past.played()) {
            String id = deed.key().site() + "/" + deed.key().point();
            Duration delay = points.get(id).timing().onDelay();
            if (deed.what() == PastDeed.What.ENDED) {
                ended.put(deed.key(), deed.at());
            } else if (deed.what() == PastDeed.What.BEGAN) {
                Optional.ofNullable(ended.get(deed.key()))
                        .filter(at -> at.plus(delay).isAfter(deed.at()))
                        .ifPresent(any -> hasty.add(id));
            }
        }
        return hasty;
    }

    /**
     * How long chatter takes to settle, and the off-delay, are in what is played already. So is the on-delay: what began is
     * reported earlier by as much, because some things count from the report.
     */
    private static Timing over(Timing timing, boolean hasty) {
        Nuisance.Numbers numbers = timing.nuisance();
        return new Timing(
                hasty ? Duration.ZERO : timing.onDelay(),
                Duration.ZERO,
                timing.latching(),
                timing.realarm(),
                new Nuisance.Numbers(
                        numbers.count(), numbers.within(), Duration.ZERO, numbers.fleeting(), numbers.stale()));
    }
}
