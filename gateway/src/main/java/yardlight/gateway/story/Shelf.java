package yardlight.gateway.story;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.wire.Spans;

/** For how long an alarm may be put aside on the page. */
final class Shelf {

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

    private Shelf() {}

    static List<StorySheet.Span> of(Clockface clock, Tongue tongue) {
        return OFFERED.stream()
                .map(length -> new StorySheet.Span(
                        length.toString(),
                        tongue.say(
                                "story.until",
                                Spans.words(length, tongue),
                                clock.read(clock.now().plus(length)))))
                .toList();
    }

    /** One of those that are offered. */
    static Optional<Duration> read(String text) {
        return OFFERED.stream().filter(length -> length.toString().equals(text)).findFirst();
    }
}
