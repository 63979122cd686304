package yardlight.gateway.clock;

import java.time.Duration;
import java.util.StringJoiner;

/** How long something took, in words, to the second: {@code 10 h 5 s}. */
final class Span {

    private Span() {}

    static String words(Duration span) {
        var words = new StringJoiner(" ");
        words.setEmptyValue("less than 1 s");
        add(words, span.toDays(), "d");
        add(words, span.toHoursPart(), "h");
        add(words, span.toMinutesPart(), "min");
        add(words, span.toSecondsPart(), "s");
        return words.toString();
    }

    private static void add(StringJoiner words, long number, String unit) {
        if (number != 0) {
            words.add(number + " " + unit);
        }
    }
}
