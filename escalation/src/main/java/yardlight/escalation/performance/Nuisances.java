package yardlight.escalation.performance;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Nuisance;

/** The alarms that wear people out, by the rules of {@link Nuisance}. */
final class Nuisances {

    private Nuisances() {}

    /**
     * The alarms that chattered within the span.
     *
     * @param alarms also some from before it: an alarm remembers its newest activations, those of all together are nearly all
     * @param numbers what tells a nuisance, by the alarm
     */
    static Set<AlarmKey> chattering(
            Collection<PastAlarm> alarms, Span span, Function<AlarmKey, Nuisance.Numbers> numbers) {
        Map<AlarmKey, TreeSet<Instant>> activations = new HashMap<>();
        for (PastAlarm alarm : alarms) {
            TreeSet<Instant> of = activations.computeIfAbsent(alarm.key(), key -> new TreeSet<>());
            of.add(alarm.at());
            of.addAll(alarm.activations());
        }
        var found = new TreeSet<AlarmKey>();
        activations.forEach((key, instants) -> {
            if (chattered(List.copyOf(instants), span, numbers.apply(key))) {
                found.add(key);
            }
        });
        return found;
    }

    private static boolean chattered(List<Instant> activations, Span span, Nuisance.Numbers numbers) {
        for (int i = numbers.count(); i <= activations.size(); i++) {
            boolean here = span.holds(activations.get(i - 1));
            if (here && Nuisance.chattering(activations.subList(i - numbers.count(), i), numbers)) {
                return true;
            }
        }
        return false;
    }

    static boolean fleeting(PastAlarm alarm, Nuisance.Numbers numbers) {
        return alarm.over()
                .filter(over -> Nuisance.fleeting(alarm.at(), over, numbers))
                .filter(over ->
                        alarm.answeredAt().filter(at -> !at.isAfter(over)).isEmpty())
                .isPresent();
    }

    /** The most alarms that were stale on any one day of the span, by the days of a zone; up to {@code now}. */
    static int stalest(
            Collection<PastAlarm> alarms,
            Span span,
            ZoneId zone,
            Instant now,
            Function<AlarmKey, Nuisance.Numbers> numbers) {
        Map<LocalDate, Integer> days = new HashMap<>();
        for (PastAlarm alarm : alarms) {
            Duration limit = numbers.apply(alarm.key()).stale();
            Instant end = earlier(alarm.over().orElse(now), earlier(now, span.to()));
            Instant stale = alarm.at().plus(limit);
            Instant first = stale.isBefore(span.from()) ? span.from() : stale;
            // Stale is longer than the limit: one that ends right then never was.
            if (end.isAfter(first)) {
                LocalDate last = LocalDate.ofInstant(end.minusNanos(1), zone);
                LocalDate.ofInstant(first, zone)
                        .datesUntil(last.plusDays(1))
                        .forEach(day -> days.merge(day, 1, Integer::sum));
            }
        }
        return days.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }
}
