package yardlight.gateway.ladders;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import yardlight.escalation.rehearsal.Rehearsal;
import yardlight.escalation.rehearsal.Unheard;
import yardlight.gateway.edit.Telling;
import yardlight.gateway.page.Hours;
import yardlight.gateway.page.HoursDrawing;
import yardlight.gateway.page.Tongue;

/**
 * The hours of the next seven days in which nobody would hear an alarm, as a list and as a drawing.
 *
 * @param summary all of it in one sentence
 */
record WeekSheet(String summary, List<String> rows, HoursDrawing drawing) {

    private static final int MOST_ROWS = 30;

    static WeekSheet of(Practice.Played played, Hours hours, Tongue tongue) {
        Instant to = played.from().plus(Practice.WEEK);
        List<Unheard.Span> spans = played.unheard();
        var rows = new ArrayList<>(spans.stream()
                .limit(MOST_ROWS)
                .map(span -> row(span, hours, tongue))
                .toList());
        if (spans.size() > MOST_ROWS) {
            rows.add(tongue.say("ladders.week.more", spans.size() - MOST_ROWS));
        }
        List<HoursDrawing.Span> marks = spans.stream()
                .map(span -> new HoursDrawing.Span(span.from(), span.to(), span.ear() == Rehearsal.Ear.NONE))
                .toList();
        var whole = new HoursDrawing.Span(played.from(), to, false);
        return new WeekSheet(summary(spans, tongue), rows, HoursDrawing.of(whole, marks, hours, tongue));
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
}
