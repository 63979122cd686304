package yardlight.escalation.roster;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import yardlight.escalation.walltime.WallTime;

/**
 * Counts nights. A night is had by whoever is on call for the longest part of it; of two with equal parts by the one whose name
 * comes first.
 *
 * @param begins local to the roster, on the day that the night is called by
 * @param ends on the day after, exclusive
 */
public record Nights(LocalTime begins, LocalTime ends) {

    /**
     * How many nights each has, as written in the roster; who has none is not in it.
     *
     * @param from the day on which the first night begins
     * @param to the day on which the first night begins that is not counted
     */
    public Map<String, Integer> count(Roster roster, LocalDate from, LocalDate to) {
        var counted = new TreeMap<String, Integer>();
        from.datesUntil(to).forEach(day -> {
            Instant start = WallTime.instant(day.atTime(begins), roster.zone());
            Instant end = WallTime.instant(day.plusDays(1).atTime(ends), roster.zone());
            had(roster, start, end).ifPresent(who -> counted.merge(who, 1, Integer::sum));
        });
        return counted;
    }

    private static Optional<String> had(Roster roster, Instant start, Instant end) {
        Map<String, Duration> parts = roster.stretches(start, end).stream()
                .filter(stretch -> stretch.onCall().isPresent())
                .collect(Collectors.toMap(
                        stretch -> stretch.onCall().orElseThrow(),
                        stretch -> Duration.between(stretch.from(), stretch.to()),
                        Duration::plus,
                        TreeMap::new));
        return parts.entrySet().stream()
                .max(Map.Entry.<String, Duration>comparingByValue()
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                .map(Map.Entry::getKey);
    }
}
