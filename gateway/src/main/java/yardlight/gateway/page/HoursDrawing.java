package yardlight.gateway.page;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Hours of days, drawn: a row for each day by the clock on the wall, and marks in it.
 *
 * @param height of the drawing
 */
public record HoursDrawing(List<Day> days, List<Tick> ticks, int height) {

    /** In units of the drawing. */
    private static final int LEFT = 46;

    private static final int ROW = 20;
    private static final int TOP = 18;
    private static final double HOUR = 12;
    private static final double SECONDS_OF_AN_HOUR = 3600;
    private static final double LEAST = 1.5;

    /**
     * What is marked.
     *
     * @param from inclusive
     * @param to exclusive
     * @param none drawn solid, else hatched
     */
    public record Span(Instant from, Instant to, boolean none) {}

    /** One day of it, by the clock on the wall. */
    public record Day(String label, int y, Mark part, List<Mark> marks) {}

    /**
     * A stretch of a day.
     *
     * @param none whether nobody at all is there to be called, rather than only later
     */
    public record Mark(String x, String width, boolean none) {}

    /** An hour at which there is a line. */
    public record Tick(String x, String label) {}

    /**
     * Draws them.
     *
     * @param whole the time that is shown
     * @param spans in order
     */
    public static HoursDrawing of(Span whole, List<Span> spans, Hours hours, Tongue tongue) {
        var days = new ArrayList<Day>();
        LocalDate day = hours.dayOf(whole.from());
        while (!day.isAfter(hours.dayOf(whole.to().minusNanos(1)))) {
            days.add(day(day, days.size(), whole, spans, hours));
            day = day.plusDays(1);
        }
        return new HoursDrawing(days, ticks(tongue), TOP + ROW * days.size() + 2);
    }

    private static Day day(LocalDate day, int row, Span whole, List<Span> spans, Hours hours) {
        List<Mark> marks = spans.stream()
                .filter(span -> touches(span, day, hours))
                .map(span -> mark(span, day, hours))
                .toList();
        return new Day(hours.date(day), TOP + ROW * row, mark(whole, day, hours), marks);
    }

    private static boolean touches(Span span, LocalDate day, Hours hours) {
        return !hours.dayOf(span.from()).isAfter(day)
                && !hours.dayOf(span.to().minusNanos(1)).isBefore(day);
    }

    private static Mark mark(Span span, LocalDate day, Hours hours) {
        double from = hours.dayOf(span.from()).isBefore(day) ? 0 : hour(span.from(), hours);
        double to = hours.dayOf(span.to()).isAfter(day) ? 24 : hour(span.to(), hours);
        double width = Math.max(LEAST, (to - from) * HOUR);
        return new Mark(units(LEFT + from * HOUR), units(width), span.none());
    }

    private static double hour(Instant instant, Hours hours) {
        return instant.atZone(hours.zone()).toLocalTime().toSecondOfDay() / SECONDS_OF_AN_HOUR;
    }

    private static List<Tick> ticks(Tongue tongue) {
        var ticks = new ArrayList<Tick>();
        for (int hour = 0; hour <= 24; hour += 6) {
            ticks.add(new Tick(units(LEFT + hour * HOUR), tongue.say("hours.tick." + hour)));
        }
        return ticks;
    }

    private static String units(double value) {
        return Double.toString(Math.round(value * 10) / 10.0);
    }
}
