package yardlight.escalation.alarm;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether a site is in an alarm flood (ISA-18.2): so many alarms that a person cannot take them one by one.
 * A sliding window, because fixed bins miss a flood that lies across their border.
 *
 * @param recent occurrences in the window, oldest first
 * @param on whether the flood has begun and not ended
 */
public record Flood(List<Instant> recent, boolean on) {

    /**
     * @param begins number of alarms in the window at which a flood begins. Published sources differ ("10 or more",
     *     "more than 10"); the usual value here is "10 or more", the louder reading
     * @param endsBelow the flood ends when fewer than this are in the window
     * @param window length of the window, half-open: an alarm exactly this old has left it
     */
    public record Numbers(int begins, int endsBelow, Duration window) {

        public static final Numbers USUAL = new Numbers(10, 5, Duration.ofMinutes(10));

        public Numbers {
            if (window.isNegative() || window.isZero()) {
                throw new IllegalArgumentException("flood window must be positive: " + window);
            }
            if (endsBelow < 1 || begins < endsBelow) {
                throw new IllegalArgumentException(
                        "flood must begin at or above where it ends: " + begins + " and " + endsBelow);
            }
        }
    }

    public static final Flood NONE = new Flood(List.of(), false);

    public Flood {
        recent = List.copyOf(recent);
    }

    /** The flood as it stands at {@code now}, old alarms forgotten. */
    public Flood at(Instant now, Numbers numbers) {
        Instant edge = now.minus(numbers.window());
        List<Instant> left = recent.stream().filter(at -> at.isAfter(edge)).toList();
        return new Flood(left, on ? left.size() >= numbers.endsBelow() : left.size() >= numbers.begins());
    }

    /**
     * The flood after one more alarm at {@code now}. Only as many are kept as the numbers can ask for. A flood that ran
     * dry unobserved before this alarm has ended, whatever this alarm adds.
     */
    public Flood plus(Instant now, Numbers numbers) {
        Flood justBefore = at(now.minusNanos(1), numbers);
        var more = new ArrayList<>(justBefore.recent);
        more.add(now);
        int spare = Math.max(0, more.size() - numbers.begins());
        return new Flood(more.subList(spare, more.size()), justBefore.on).at(now, numbers);
    }
}
