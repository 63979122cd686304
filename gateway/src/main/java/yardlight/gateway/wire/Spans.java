package yardlight.gateway.wire;

import java.time.Duration;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import yardlight.gateway.page.Tongue;

/** Lengths of time to choose from, in words. */
public final class Spans {

    /** How often a box says that it is alive. */
    public static final List<String> EVERY =
            List.of("PT30S", "PT1M", "PT2M", "PT5M", "PT10M", "PT15M", "PT30M", "PT1H");

    /** How late it may be. */
    public static final List<String> GRACE = List.of("PT30S", "PT1M", "PT2M", "PT5M", "PT10M", "PT30M", "PT1H", "PT6H");

    /** How long somebody has to answer. */
    public static final List<String> WAIT = List.of("PT1M", "PT2M", "PT5M", "PT10M", "PT15M", "PT30M", "PT1H");

    private Spans() {}

    /**
     * One to choose.
     *
     * @param value ISO 8601
     */
    public record Choice(String value, String words, boolean chosen) {}

    /** These, and the one that is chosen if it is none of them. */
    public static List<Choice> choices(List<String> spans, String chosen, Tongue tongue) {
        var choices = new ArrayList<Choice>();
        boolean other = !chosen.isEmpty()
                && !spans.contains(chosen)
                && !words(chosen, tongue).isEmpty();
        Stream.concat(spans.stream(), other ? Stream.of(chosen) : Stream.empty())
                .forEach(span -> choices.add(new Choice(span, words(span, tongue), span.equals(chosen))));
        return choices;
    }

    /** {@code 5 min}; empty for what is no length of time. */
    public static String words(String span, Tongue tongue) {
        try {
            return words(Duration.parse(span), tongue);
        } catch (DateTimeParseException e) {
            return "";
        }
    }

    /** In the largest unit that says it without a rest. */
    public static String words(Duration span, Tongue tongue) {
        long seconds = span.toSeconds();
        if (seconds % 86_400 == 0 && seconds > 0) {
            return tongue.count("wire.days", seconds / 86_400);
        }
        if (seconds % 3_600 == 0 && seconds > 0) {
            return tongue.say("wire.hours", seconds / 3_600);
        }
        return seconds % 60 == 0 && seconds > 0
                ? tongue.say("wire.minutes", seconds / 60)
                : tongue.say("wire.seconds", seconds);
    }
}
