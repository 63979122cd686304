package yardlight.gateway.story;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;

/** For how long an alarm may be put aside on the page. */
final class Spans {

    /** The engine allows seven days, and has the last word. */
    private static final List<Duration> OFFERED = List.of(
            Duration.ofMinutes(30),
            Duration.ofHours(1),
            Duration.ofHours(2),
            Duration.ofHours(4),
            Duration.ofHours(8),
            Duration.ofHours(12),
            Duration.ofDays(1),
            Duration.ofDays(3),
            Duration.ofDays(7));

    private Spans() {}

    static List<StorySheet.Span> of(Clockface clock, Tongue tongue) {
        return OFFERED.stream()
                .map(length -> new StorySheet.Span(
                        length.toString(),
                        tongue.say(
                                "story.until",
                                words(length, tongue),
                                clock.read(clock.now().plus(length)))))
                .toList();
    }

    /** One of those that are offered. */
    static Optional<Duration> read(String text) {
        return OFFERED.stream().filter(length -> length.toString().equals(text)).findFirst();
    }

    /** {@code 30 min}, {@code 2 h}, {@code 3 days}. */
    static String words(Duration length, Tongue tongue) {
        if (length.compareTo(Duration.ofHours(1)) < 0) {
            return length.toMinutes() + " min";
        }
        return length.compareTo(Duration.ofDays(2)) < 0
                ? length.toHours() + " h"
                : tongue.say("story.days", Long.toString(length.toDays()));
    }
}
