package yardlight.escalation;

import static yardlight.escalation.limit.Conditions.DRIFT;
import static yardlight.escalation.limit.Conditions.FALLING;
import static yardlight.escalation.limit.Conditions.HIGH;
import static yardlight.escalation.limit.Conditions.HIGH_HIGH;
import static yardlight.escalation.limit.Conditions.LOW;
import static yardlight.escalation.limit.Conditions.LOW_LOW;
import static yardlight.escalation.limit.Conditions.RISING;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.limit.Gauge;

/**
 * What several alarms of one point have in common: what is read there goes up, or down. How far is what tells them apart; which
 * conditions are meant stands in docs/decisions/one-cause-one-callout.md.
 */
public record Cause(String site, String point, Direction direction) {

    /** A sign that may pass comes first, then the limits, then what cannot be mended any more once it has happened. */
    public enum Direction {
        UP(Map.of(DRIFT, 1, RISING, 1, HIGH, 2, HIGH_HIGH, 3, Tanks.OVERFLOW, 4)),
        DOWN(Map.of(DRIFT, 1, FALLING, 1, Tanks.FALLING, 1, LOW, 2, LOW_LOW, 3, Leaks.LEAK, 3));

        private final Map<String, Integer> steps;

        Direction(Map<String, Integer> steps) {
            this.steps = steps;
        }
    }

    private static final Map<String, String> BESIDE =
            Map.of(HIGH_HIGH, Tanks.OVERFLOW, LOW_LOW, Leaks.LEAK, Leaks.LEAK, LOW_LOW);

    /** The further of two at one point first; else in the order of their keys. */
    static final Comparator<Alarm> FURTHEST_FIRST = (one, other) -> {
        boolean here = one.key().site().equals(other.key().site())
                && one.key().point().equals(other.key().point());
        int further = here ? step(other) - step(one) : 0;
        return further != 0 ? further : one.key().compareTo(other.key());
    };

    /** Empty when the alarm is of no known direction, so that nothing else shares its cause. */
    static Optional<Cause> of(Situation now, Alarm alarm) {
        AlarmKey key = alarm.key();
        return direction(now, alarm).map(direction -> new Cause(key.site(), key.point(), direction));
    }

    /**
     * Whether somebody who knows of the other one has to hear of this one too. What is foretold or taken for a leak may be answered
     * and slept on; that a last limit was passed is something else, and the other way round.
     */
    static boolean worse(Alarm one, Alarm other) {
        return one.priority() == Priority.CRITICAL
                || one.priority().compareTo(other.priority()) > 0
                || further(one, other)
                || BESIDE.getOrDefault(one.condition(), "").equals(other.condition());
    }

    /** Whether it has gone further, of two of one cause. */
    static boolean further(Alarm one, Alarm other) {
        return step(one) > step(other);
    }

    /** The alarms that can be of it. */
    List<AlarmKey> keys() {
        return direction.steps.keySet().stream()
                .sorted()
                .map(condition -> new AlarmKey(site, point, condition))
                .toList();
    }

    /** The other alarms of the point that may share the cause of this one, whichever way it goes; none when no way is known. */
    public static List<AlarmKey> near(AlarmKey key) {
        return Arrays.stream(Direction.values())
                .filter(one -> one.steps.containsKey(key.condition()))
                .flatMap(one -> new Cause(key.site(), key.point(), one).keys().stream())
                .filter(other -> !other.equals(key))
                .distinct()
                .toList();
    }

    private static int step(Alarm alarm) {
        return Arrays.stream(Direction.values())
                .mapToInt(one -> one.steps.getOrDefault(alarm.key().condition(), 0))
                .max()
                .orElse(0);
    }

    private static Optional<Direction> direction(Situation now, Alarm alarm) {
        String condition = alarm.key().condition();
        return condition.equals(DRIFT)
                ? drift(now, alarm)
                : Arrays.stream(Direction.values())
                        .filter(one -> one.steps.containsKey(condition))
                        .findFirst();
    }

    /** By the sum that found it, whatever is read by now; of a box's own drift by its numbers. */
    private static Optional<Direction> drift(Situation now, Alarm alarm) {
        AlarmKey key = alarm.key();
        return now.gauge(new Gauge.Key(key.site(), key.point()))
                .driftsUp()
                .map(up -> up ? 1 : -1)
                .or(() -> beside(alarm))
                .filter(side -> side != 0)
                .map(side -> side > 0 ? Direction.UP : Direction.DOWN);
    }

    private static Optional<Integer> beside(Alarm alarm) {
        Optional<BigDecimal> target = alarm.measured().limit();
        return alarm.measured().value().flatMap(value -> target.map(value::compareTo));
    }
}
