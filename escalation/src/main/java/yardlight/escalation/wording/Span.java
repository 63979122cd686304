package yardlight.escalation.wording;

import java.time.Duration;

/** Lengths of time as they stand in a text, in two units at most. */
final class Span {

    private Span() {}

    /** "40 s", "27 min", "1 h 49 min", "2 d 3 h"; what is left over is cut off. */
    static String of(Duration length) {
        if (length.toDays() > 0) {
            return both(length.toDays() + " d", length.toHoursPart(), " h");
        }
        if (length.toHours() > 0) {
            return both(length.toHours() + " h", length.toMinutesPart(), " min");
        }
        return length.toMinutes() > 0 ? length.toMinutes() + " min" : length.toSeconds() + " s";
    }

    private static String both(String large, int small, String unit) {
        return small == 0 ? large : large + " " + small + unit;
    }
}
