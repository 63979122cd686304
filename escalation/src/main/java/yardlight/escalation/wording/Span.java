package yardlight.escalation.wording;

import java.time.Duration;
import java.util.Optional;

/** Lengths of time as they stand in a text, in two units at most. */
final class Span {

    /** Minutes from which on hours are enough. */
    private static final long COARSE = 10 * 60;

    private static final long SOON_MOST = 48 * 60;

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

    /** A time that nobody knows to the minute: "5 min" for all that is shorter, "25 min", "1 h 50", "14 h"; empty from two days on. */
    static Optional<String> about(Duration length) {
        long minutes = length.toMinutes();
        if (minutes >= SOON_MOST) {
            return Optional.empty();
        }
        if (minutes >= COARSE) {
            return Optional.of(minutes / 60 + " h");
        }
        if (minutes >= 60) {
            long tens = minutes / 10 * 10;
            return Optional.of(tens / 60 + " h" + (tens % 60 == 0 ? "" : " " + tens % 60));
        }
        return Optional.of(Math.max(5, minutes / 5 * 5) + " min");
    }

    private static String both(String large, int small, String unit) {
        return small == 0 ? large : large + " " + small + unit;
    }
}
