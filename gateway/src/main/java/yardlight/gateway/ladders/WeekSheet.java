package yardlight.gateway.ladders;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import yardlight.escalation.rehearsal.Rehearsal;
import yardlight.escalation.rehearsal.Unheard;
import yardlight.gateway.edit.Telling;
import yardlight.gateway.page.Tongue;

/**
 * The hours of the next seven days in which nobody would hear an alarm, as a list and as a drawing.
 *
 * @param summary all of it in one sentence
 * @param height of the drawing
 */
record WeekSheet(String summary, List<String> rows, List<Day> days, List<Tick> ticks, int height) {

    /** In units of the drawing. */
    private static final int LEFT = 46;

    private static final int ROW = 20;
    private static final int TOP = 18;
    private static final double HOUR = 12;
    private static final double SECONDS_OF_AN_HOUR = 3600;
    private static final double LEAST = 1.5;
    private static final int MOST_ROWS = 30;

    /** One day of it, by the clock on the wall. */
    record Day(String label, int y, Mark part, List<Mark> marks) {}

    /**
     * A stretch of a day.
     *
     * @param none whether nobody at all is there to be called, rather than only later
     */
    record Mark(String x, String width, boolean none) {}

    /** An hour at which there is a line. */
    record Tick(String x, String label) {}

    static WeekSheet of(Practice.Played played, Hours hours, Tongue tongue) {
        Instant to = played.from().plus(Practice.WEEK);
        List<Unheard.Span> spans = played.unheard();
        var days = new ArrayList<Day>();
        LocalDate day = hours.dayOf(played.from());
        while (!day.isAfter(hours.dayOf(to.minusNanos(1)))) {
            days.add(day(day, days.size(), new Unheard.Span(played.from(), to, Rehearsal.Ear.OPEN), spans, hours));
            day = day.plusDays(1);
        }
        var rows = new ArrayList<>(spans.stream()
                .limit(MOST_ROWS)
                .map(span -> row(span, hours, tongue))
                .toList());
        if (spans.size() > MOST_ROWS) {
            rows.add(tongue.say("ladders.week.more", spans.size() - MOST_ROWS));
        }
        return new WeekSheet(summary(spans, tongue), rows, days, ticks(tongue), TOP + ROW * days.size() + 2);
    }

    private static String summary(List<Unheard.Span> spans, Tongue tongue) {
        return spans.isEmpty()
                ? tongue.say("ladders.week.always")
                : tongue.say("ladders.week.unheard", Telling.length(total(spans)));
    }

    /** To the minute: the week begins in the middle of one. */
    static Duration total(List<Unheard.Span> spans) {
        Duration all = spans.stream().map(Unheard.Span::length).reduce(Duration.ZERO, Duration::plus);
        return Duration.ofMinutes(all.plusSeconds(30).toMinutes());
    }

    private static String row(Unheard.Span span, Hours hours, Tongue tongue) {
        String key = span.ear() == Rehearsal.Ear.LATER ? "ladders.week.later" : "ladders.week.none";
        return tongue.say(key, hours.day(span.from()), hours.day(span.to()));
    }

    private static Day day(LocalDate day, int row, Unheard.Span week, List<Unheard.Span> spans, Hours hours) {
        List<Mark> marks = spans.stream()
                .filter(span -> touches(span, day, hours))
                .map(span -> mark(span, day, hours))
                .toList();
        return new Day(hours.date(day), TOP + ROW * row, mark(week, day, hours), marks);
    }

    private static boolean touches(Unheard.Span span, LocalDate day, Hours hours) {
        return !hours.dayOf(span.from()).isAfter(day)
                && !hours.dayOf(span.to().minusNanos(1)).isBefore(day);
    }

    private static Mark mark(Unheard.Span span, LocalDate day, Hours hours) {
        double from = hours.dayOf(span.from()).isBefore(day) ? 0 : hour(span.from(), hours);
        double to = hours.dayOf(span.to()).isAfter(day) ? 24 : hour(span.to(), hours);
        double width = Math.max(LEAST, (to - from) * HOUR);
        return new Mark(units(LEFT + from * HOUR), units(width), span.ear() == Rehearsal.Ear.NONE);
    }

    private static double hour(Instant instant, Hours hours) {
        return instant.atZone(hours.zone()).toLocalTime().toSecondOfDay() / SECONDS_OF_AN_HOUR;
    }

    private static List<Tick> ticks(Tongue tongue) {
        var ticks = new ArrayList<Tick>();
        for (int hour = 0; hour <= 24; hour += 6) {
            ticks.add(new Tick(units(LEFT + hour * HOUR), tongue.say("ladders.week.tick." + hour)));
        }
        return ticks;
    }

    private static String units(double value) {
        return Double.toString(Math.round(value * 10) / 10.0);
    }
}
