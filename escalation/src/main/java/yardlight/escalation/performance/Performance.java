package yardlight.escalation.performance;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Flood;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Timing;

/**
 * The alarms of a time in the terms of ISA-18.2 (monitoring and assessment) and EEMUA 191. Rates are those of announced
 * alarms, as the standard has it; what was withheld is counted beside them.
 *
 * @param span up to now, if the time is not over
 * @param occurred all occurrences
 * @param announced those for which somebody was to be called
 * @param average in ten minutes
 * @param peak the most in any ten minutes
 * @param above the part of all ten minutes that had more than ten
 * @param floods stretches of time
 * @param inFlood the part of the time
 * @param frequent the ten most frequent, the most frequent first
 * @param load what those ten are of all that were announced, 0 to 1
 * @param fleeting occurrences
 * @param stalest the most alarms that were stale on one day
 * @param priorities the part of each, 0 to 1; empty without alarms
 */
public record Performance(
        Span span,
        int occurred,
        int announced,
        double average,
        int peak,
        double above,
        List<Span> floods,
        double inFlood,
        List<Frequent> frequent,
        double load,
        Set<AlarmKey> chattering,
        int fleeting,
        int stalest,
        Map<Priority, Double> priorities,
        Answers answers) {

    /** More than this in ten minutes is too much for one person (ISA-18.2, EEMUA 191). */
    static final int TEN = 10;

    private static final int MOST_FREQUENT = 10;

    /**
     * One of the most frequent alarms.
     *
     * @param share of all that were announced, 0 to 1
     * @param delays what longer on-delays would have done, the shortest first
     */
    public record Frequent(AlarmKey key, int count, double share, List<OnDelays.Effect> delays) {}

    /**
     * How long it took until somebody acknowledged, from when it was known here.
     *
     * @param unanswered announced ones that nobody acknowledged
     * @param median empty when nobody answered any, as the others
     */
    public record Answers(
            int answered,
            int unanswered,
            Optional<Duration> median,
            Optional<Duration> ninth,
            Optional<Duration> longest) {

        static Answers of(List<PastAlarm> announced) {
            List<Duration> times = announced.stream()
                    .flatMap(alarm -> alarm.answeredAt().map(at -> Duration.between(alarm.receivedAt(), at)).stream())
                    .sorted()
                    .toList();
            return new Answers(
                    times.size(), announced.size() - times.size(), at(times, 0.5), at(times, 0.9), at(times, 1));
        }

        /** The smallest that so large a part does not pass (nearest rank). */
        private static Optional<Duration> at(List<Duration> times, double part) {
            int rank = (int) Math.ceil(part * times.size());
            return times.isEmpty() ? Optional.empty() : Optional.of(times.get(Math.max(1, rank) - 1));
        }
    }

    public Performance {
        floods = List.copyOf(floods);
        frequent = List.copyOf(frequent);
        chattering = java.util.Collections.unmodifiableSet(new java.util.TreeSet<>(chattering));
        priorities = java.util.Collections.unmodifiableMap(new java.util.TreeMap<>(priorities));
    }

    /**
     * Rates the alarms of a time.
     *
     * @param alarms those that occurred in the span and some from before it, which only show what went on: a flood that had
     *     begun, an alarm that was stale; in any order
     * @param span the time, up to {@code now} at most
     * @param zone whose days count for stale alarms
     * @param timing by the alarm
     */
    public static Performance of(
            List<PastAlarm> alarms, Span span, ZoneId zone, Instant now, Function<AlarmKey, Timing> timing) {
        List<PastAlarm> sorted =
                alarms.stream().sorted(Comparator.comparing(PastAlarm::at)).toList();
        List<PastAlarm> here =
                sorted.stream().filter(alarm -> span.holds(alarm.at())).toList();
        List<PastAlarm> announced = here.stream().filter(PastAlarm::announced).toList();
        List<Instant> instants = announced.stream().map(PastAlarm::at).toList();
        List<Span> floods = floods(sorted, span);
        Duration inFlood = floods.stream().map(one -> one.within(span)).reduce(Duration.ZERO, Duration::plus);
        List<Frequent> frequent = frequent(announced, timing);
        return new Performance(
                span,
                here.size(),
                announced.size(),
                Rates.average(announced.size(), span),
                Rates.peak(instants),
                Rates.above(instants, TEN, span),
                floods,
                inFlood.toMillis() / (double) Math.max(1, span.length().toMillis()),
                frequent,
                frequent.stream().mapToDouble(Frequent::share).sum(),
                Nuisances.chattering(sorted, span, key -> timing.apply(key).nuisance()),
                (int) here.stream()
                        .filter(alarm -> Nuisances.fleeting(
                                alarm, timing.apply(alarm.key()).nuisance()))
                        .count(),
                Nuisances.stalest(
                        sorted, span, zone, now, key -> timing.apply(key).nuisance()),
                priorities(announced),
                Answers.of(announced));
    }

    private static List<Span> floods(List<PastAlarm> sorted, Span span) {
        List<Instant> all =
                sorted.stream().filter(PastAlarm::announced).map(PastAlarm::at).toList();
        return Rates.floods(all, Flood.Numbers.USUAL).stream()
                .filter(flood -> !flood.within(span).isZero())
                .toList();
    }

    private static List<Frequent> frequent(List<PastAlarm> announced, Function<AlarmKey, Timing> timing) {
        Map<AlarmKey, List<PastAlarm>> byKey = new HashMap<>();
        announced.forEach(alarm ->
                byKey.computeIfAbsent(alarm.key(), key -> new ArrayList<>()).add(alarm));
        return byKey.entrySet().stream()
                .sorted(Comparator.comparing((Map.Entry<AlarmKey, List<PastAlarm>> one) ->
                                -one.getValue().size())
                        .thenComparing(Map.Entry::getKey))
                .limit(MOST_FREQUENT)
                .map(one -> new Frequent(
                        one.getKey(),
                        one.getValue().size(),
                        one.getValue().size() / (double) announced.size(),
                        OnDelays.of(one.getValue(), timing.apply(one.getKey()))))
                .toList();
    }

    private static Map<Priority, Double> priorities(List<PastAlarm> announced) {
        Map<Priority, Double> parts = new EnumMap<>(Priority.class);
        announced.forEach(alarm -> parts.merge(alarm.priority(), 1.0 / announced.size(), Double::sum));
        return parts;
    }
}
