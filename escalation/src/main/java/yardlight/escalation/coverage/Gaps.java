package yardlight.escalation.coverage;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import yardlight.escalation.alarm.Priority;

/** What can be said of the gaps of one site: which is to be named first, and which of them are new. */
public final class Gaps {

    private static final Comparator<Span> IN_TIME =
            Comparator.comparing(Span::from).thenComparing(Span::to);

    /** The order in which gaps are to be named: the highest priority first, of one priority the first in time. */
    public static final Comparator<Gap> WORST_FIRST = Comparator.comparing((Gap gap) -> highest(gap.priorities()))
            .reversed()
            .thenComparing(Gap::from);

    private Gaps() {}

    /** A time without a priority. */
    record Span(Instant from, Instant to) {}

    /**
     * The one to name where there is room for one, and how many there are besides.
     *
     * @param named of the highest priority that has any, the first
     */
    public record Ahead(Gap named, int more) {}

    /** Empty when there is no gap. */
    public static Optional<Ahead> ahead(List<Gap> gaps) {
        return gaps.stream().min(WORST_FIRST).map(named -> new Ahead(named, gaps.size() - 1));
    }

    private static Priority highest(Set<Priority> priorities) {
        return priorities.stream().max(Comparator.naturalOrder()).orElseThrow();
    }

    /** In order of time; priorities that have a gap from the same instant to the same one have it together. */
    static List<Gap> together(Map<Priority, List<Span>> spans) {
        var all = new TreeMap<Span, Set<Priority>>(IN_TIME);
        spans.forEach((priority, some) -> some.forEach(span ->
                all.computeIfAbsent(span, any -> EnumSet.noneOf(Priority.class)).add(priority)));
        var gaps = new ArrayList<Gap>();
        all.forEach((span, priorities) -> gaps.add(new Gap(span.from(), span.to(), priorities)));
        return List.copyOf(gaps);
    }

    /** The times in which there was no gap before. */
    public static List<Gap> opened(List<Gap> before, List<Gap> after) {
        var opened = new EnumMap<Priority, List<Span>>(Priority.class);
        for (Priority priority : Priority.values()) {
            opened.put(priority, without(spans(after, priority), spans(before, priority)));
        }
        return together(opened);
    }

    private static List<Span> spans(List<Gap> gaps, Priority priority) {
        return gaps.stream()
                .filter(gap -> gap.priorities().contains(priority))
                .map(gap -> new Span(gap.from(), gap.to()))
                .toList();
    }

    /** Both in order and not overlapping, as the gaps of one priority are. */
    private static List<Span> without(List<Span> spans, List<Span> less) {
        var left = new ArrayList<Span>();
        int first = 0;
        for (Span span : spans) {
            Instant from = span.from();
            while (first < less.size() && !less.get(first).to().isAfter(from)) {
                first++;
            }
            for (int i = first; i < less.size() && less.get(i).from().isBefore(span.to()); i++) {
                if (less.get(i).from().isAfter(from)) {
                    left.add(new Span(from, less.get(i).from()));
                }
                from = less.get(i).to();
            }
            if (from.isBefore(span.to())) {
                left.add(new Span(from, span.to()));
            }
        }
        return left;
    }
}
