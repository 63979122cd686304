package yardlight.escalation.performance;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.escalation.alarm.Flood;

/** How fast alarms came. Instants are in order, oldest first. */
public final class Rates {

    private static final Duration TEN_MINUTES = Duration.ofMinutes(10);

    private Rates() {}

    /** The largest number in any ten minutes: a window that slides, open at its start, because fixed ones hide floods. */
    public static int peak(List<Instant> alarms) {
        Deque<Instant> window = new ArrayDeque<>();
        int peak = 0;
        for (Instant at : alarms) {
            Instant edge = at.minus(TEN_MINUTES);
            while (!window.isEmpty() && !window.peekFirst().isAfter(edge)) {
                window.removeFirst();
            }
            window.addLast(at);
            peak = Math.max(peak, window.size());
        }
        return peak;
    }

    /** The mean in ten minutes of a span. */
    public static double average(int alarms, Span span) {
        return alarms
                * (double) TEN_MINUTES.toSeconds()
                / Math.max(1, span.length().toSeconds());
    }

    /**
     * The part of the ten minutes, one after the other from the span's start, that had more than so many alarms.
     *
     * @param most what does not count yet
     */
    public static double above(List<Instant> alarms, int most, Span span) {
        Map<Long, Integer> bins = new HashMap<>();
        for (Instant at : alarms) {
            bins.merge(Duration.between(span.from(), at).dividedBy(TEN_MINUTES), 1, Integer::sum);
        }
        long periods = Math.max(1, span.length().plus(TEN_MINUTES).minusNanos(1).dividedBy(TEN_MINUTES));
        return bins.values().stream().filter(count -> count > most).count() / (double) periods;
    }

    /**
     * The floods, oldest first: from the alarm with which the rule of {@link Flood} calls it one, to the moment at which so
     * many have left the window that it is over.
     */
    public static List<Span> floods(List<Instant> alarms, Flood.Numbers numbers) {
        var floods = new ArrayList<Span>();
        Flood flood = Flood.NONE;
        Optional<Instant> began = Optional.empty();
        for (Instant at : alarms) {
            Instant end = end(flood, numbers);
            if (flood.on() && !end.isAfter(at)) {
                floods.add(new Span(began.orElseThrow(), end));
                began = Optional.empty();
            }
            flood = flood.plus(at, numbers);
            began = flood.on() ? began.or(() -> Optional.of(at)) : Optional.empty();
        }
        if (flood.on()) {
            floods.add(new Span(began.orElseThrow(), end(flood, numbers)));
        }
        return List.copyOf(floods);
    }

    /** When the alarm leaves the window whose going leaves too few for a flood. */
    private static Instant end(Flood flood, Flood.Numbers numbers) {
        int last = flood.recent().size() - numbers.endsBelow();
        return last < 0 ? Instant.MIN : flood.recent().get(last).plus(numbers.window());
    }
}
