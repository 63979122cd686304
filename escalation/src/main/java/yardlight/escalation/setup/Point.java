package yardlight.escalation.setup;

import java.time.Duration;
import java.util.Collections;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardlight.escalation.alarm.Nuisance;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.limit.Rules;

/**
 * What is measured or switched at a site.
 *
 * @param name as people call it, used in texts
 * @param priority of its alarms when the box does not say
 * @param suppressedWhile alarms of the same site, as {@code point/condition}, during which this point's alarms are
 *     suppressed by design: a pump that stands still while its power is off is one cause, not two
 * @param inService false while somebody works on it
 * @param rules what its readings are held against
 * @param equipment what its readings are of
 */
public record Point(
        String id,
        String site,
        String name,
        Optional<String> unit,
        Optional<Priority> priority,
        Timing timing,
        Set<String> suppressedWhile,
        boolean inService,
        Rules rules,
        Equipment equipment) {

    /** A point whose readings are only held against rules. */
    public Point(
            String id,
            String site,
            String name,
            Optional<String> unit,
            Optional<Priority> priority,
            Timing timing,
            Set<String> suppressedWhile,
            boolean inService,
            Rules rules) {
        this(id, site, name, unit, priority, timing, suppressedWhile, inService, rules, Equipment.NONE);
    }

    /** A point of which no readings are expected. */
    public Point(
            String id,
            String site,
            String name,
            Optional<String> unit,
            Optional<Priority> priority,
            Timing timing,
            Set<String> suppressedWhile,
            boolean inService) {
        this(id, site, name, unit, priority, timing, suppressedWhile, inService, Rules.NONE);
    }

    public Point {
        // Sorted, so that the same setup gives the same record every time.
        suppressedWhile = Collections.unmodifiableSet(new TreeSet<>(suppressedWhile));
    }

    /** The same with other rules for its readings. */
    public Point with(Rules others) {
        return new Point(id, site, name, unit, priority, timing, suppressedWhile, inService, others, equipment);
    }

    /** The same with other delays. */
    public Point with(Timing other) {
        return new Point(id, site, name, unit, priority, other, suppressedWhile, inService, rules, equipment);
    }

    /** The same as the reader of other equipment. */
    public Point with(Equipment others) {
        return new Point(id, site, name, unit, priority, timing, suppressedWhile, inService, rules, others);
    }

    /** Whether anything of its readings has to be remembered. */
    public boolean gauged() {
        return !rules.equals(Rules.NONE) || !equipment.equals(Equipment.NONE);
    }

    /** The same while somebody works on it. */
    Point outOfService() {
        return new Point(id, site, name, unit, priority, timing, suppressedWhile, false, rules, equipment);
    }

    /**
     * A carrier, as a point of the gateway that nobody has set up: one that is back within a minute calls nobody, and one
     * that comes and goes is one outage.
     */
    static Point carrier(String channel) {
        var timing = new Timing(
                Duration.ofMinutes(1), Duration.ofMinutes(5), false, Optional.empty(), Nuisance.Numbers.USUAL);
        return new Point(
                channel,
                Site.GATEWAY,
                channel.toUpperCase(Locale.ROOT),
                Optional.empty(),
                Optional.empty(),
                timing,
                Set.of(),
                true);
    }

    /** What makes a nuisance of this point's alarms: silences come and go more slowly than switches. */
    public static Nuisance.Numbers nuisance(String id) {
        boolean silence = id.equals("box") || id.startsWith("link-") || id.startsWith("feed-");
        return silence ? Nuisance.Numbers.SLOW : Nuisance.Numbers.USUAL;
    }

    /** A point that nobody has set up yet: its name is its id in capitals, everything else is as usual. */
    public static Point unknown(String id, String site) {
        return new Point(
                id,
                site,
                id.toUpperCase(Locale.ROOT).replace('-', ' '),
                Optional.empty(),
                Optional.empty(),
                new Timing(Duration.ZERO, Duration.ZERO, false, Optional.empty(), nuisance(id)),
                Set.of(),
                true);
    }
}
