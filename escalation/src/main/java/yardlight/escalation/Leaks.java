package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.limit.Watching;
import yardlight.escalation.runtime.RunTime;
import yardlight.escalation.trend.Drop;
import yardlight.escalation.trend.FallRules;
import yardlight.escalation.trend.FastestFalls;
import yardlight.escalation.trend.Medians;
import yardlight.escalation.trend.Sample;
import yardlight.escalation.trend.Series;

/** Pressures that fall faster than they ever did: a leak until shown otherwise. */
final class Leaks {

    static final String LEAK = "leak";

    private static final String FALLS = "falls";
    private static final String FALLEN = "fallen";

    /** A pressure takes so long to settle after its pump was switched. */
    private static final Duration SETTLE = Duration.ofMinutes(5);
    /** After so long a pressure that stayed low is the usual one. */
    private static final Duration USED_TO = Duration.ofDays(1);
    /** A pressure that has regained so much of its fall is back. */
    private static final double BACK = 0.75;

    private static final Duration HOUR = Duration.ofHours(1);
    private static final Duration STEP = Duration.ofMinutes(5);

    private Leaks() {}

    /**
     * A new reading of a pressure.
     *
     * @param pump when the pump ran that makes it; its switching is no leak
     */
    static Watching.Step look(Gauge gauge, FallRules rules, Optional<RunTime> pump, Instant at) {
        var remarks = new Remarks(gauge, at);
        Series all = Curves.of(gauge, value -> value);
        Series regime = Curves.settled(pump, SETTLE).map(all::from).orElse(all);
        Drop.within(rules.within(), regime).ifPresent(drop -> {
            if (remarks.holds(LEAK)) {
                held(remarks, drop);
            } else {
                watched(remarks, rules, drop, all);
            }
        });
        return remarks.done();
    }

    private static void watched(Remarks remarks, FallRules rules, Drop drop, Series all) {
        FastestFalls falls = FastestFalls.of(remarks.noted(FALLS));
        double usual =
                Medians.of(all.samples().stream().mapToDouble(Sample::value).toArray());
        double largest = falls.largestBefore(remarks.at());
        double limit = Math.max(rules.factor() * largest, rules.least() * Math.abs(usual));
        if (falls.keptFor(rules.learn(), remarks.at()) && drop.by() > limit) {
            remarks.note(FALLS, falls.forgetting(remarks.at()).numbers());
            remarks.note(FALLEN, List.of(drop.top(), drop.now(), (double)
                    remarks.at().getEpochSecond()));
            var numbers = Remarks.Numbers.of(drop.now(), drop.top() - limit, 1).saying(curve(all));
            remarks.say(LEAK, true, numbers);
        } else {
            remarks.note(FALLS, falls.plus(remarks.at(), drop.by()).numbers());
        }
    }

    private static void held(Remarks remarks, Drop drop) {
        List<Double> fallen = remarks.noted(FALLEN);
        double top = fallen.get(0);
        double low = Math.min(fallen.get(1), drop.now());
        double since = fallen.get(2);
        boolean back = drop.now() >= low + BACK * (top - low);
        boolean used = remarks.at().getEpochSecond() - since >= USED_TO.toSeconds();
        if (back || used) {
            remarks.note(FALLEN, List.of());
            remarks.say(LEAK, false);
        } else {
            remarks.note(FALLEN, List.of(top, low, since));
        }
    }

    /** The hour before, a value for each five minutes: it goes with the alarm, whatever becomes of the readings. */
    private static String curve(Series all) {
        Instant end = all.last().at();
        var words = new StringBuilder("last hour, each 5 min:");
        for (Instant from = end.minus(HOUR); !from.isAfter(end); from = from.plus(STEP)) {
            Instant start = from;
            all.samples().stream()
                    .filter(one -> !one.at().isBefore(start) && one.at().isBefore(start.plus(STEP)))
                    .findFirst()
                    .ifPresent(one -> words.append(' ').append(shown(one.value())));
        }
        return words.toString();
    }

    private static String shown(double value) {
        return String.format(Locale.ROOT, Math.abs(value) < 100 ? "%.1f" : "%.0f", value);
    }
}
