package yardlight.gateway.account;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardlight.db.log.LogLine;
import yardlight.gateway.page.Telling;
import yardlight.gateway.wire.Spans;

/**
 * What the log says of an alarm, as a person at the site would say it, in either language. The log is written in English
 * once and for all; what nobody has other words for stays as it stands there.
 */
final class Phrases {

    private static final Pattern LIMIT = Pattern.compile("\\(limit ([^)]*)\\)$");

    private record Phrase(Pattern log, Function<MatchResult, Optional<String>> words) {}

    private final Telling telling;
    private final List<Phrase> known;

    Phrases(Telling telling) {
        this.telling = telling;
        this.known = List.of(
                phrase("\\S+ active(.*): delayed", m -> say("delayed", numbers(m.group(1)))),
                phrase("\\S+ active(.*): occurred", m -> say("occurred", numbers(m.group(1)))),
                phrase("\\S+ is now ([a-z-]+)((?:, [a-z]+)*)", this::state),
                phrase("\\S+ is taken for (\\S+) now, it was (\\S+): .*", this::taken),
                phrase("\\S+ acknowledged by (\\S+) by (\\S+?)(?:: (.*))?, is now \\S+", this::acknowledged),
                phrase("\\S+ acknowledged with \\S+/(\\S+) by (\\S+), is now \\S+", this::answeredWith),
                phrase("\\S+ shelved by (\\S+) for (\\S+): (.*), is now \\S+", this::shelved),
                phrase("\\S+ unshelved by (\\S+), is now \\S+", m -> say("unshelved", contact(m.group(1)))),
                phrase("\\S+ reset by (\\S+), is now \\S+", m -> say("reset", contact(m.group(1)))),
                phrase("\\S+ note by (\\S+): (.*)", m -> say("note", contact(m.group(1)), m.group(2))),
                phrase("callout \\d+ calls rung (\\d+), round (\\d+)", m -> say("calls", m.group(1), m.group(2))),
                phrase("callout \\d+ takes in \\S+/(\\S+)", m -> say("takes-in", telling.condition(m.group(1)))),
                // Whoever answered has a line of their own.
                phrase("callout \\d+ answered by .*", m -> Optional.of("")),
                phrase("callout \\d+ ended(?: for \\S+)?: (.*)", m -> say("ended", telling.reason(m.group(1)))),
                phrase("callout \\d+ goes on, the alarm is back", m -> say("back")),
                phrase("callout \\d+ calls again: .*", m -> say("again")),
                phrase("callout \\d+ goes on at once: .*", m -> say("at-once")),
                phrase("callout \\d+ is at rung (\\d+) now: .*", m -> say("moved", m.group(1))),
                phrase("callout \\d+ held until (\\S+): .*", m -> say("held", time(m.group(1)))),
                phrase("callout \\d+ climbs once more: .*", m -> say("once-more")),
                phrase("callout \\d+ exhausted: nobody answered", m -> say("exhausted")),
                phrase("callout \\d+ exhausted: there was nobody to call", m -> say("nobody")));
    }

    /** The line in plain words; an empty text for what goes without saying, and nothing for what has no other words. */
    Optional<String> of(LogLine line) {
        for (Phrase phrase : known) {
            var matcher = phrase.log().matcher(line.words());
            if (matcher.matches()) {
                return phrase.words().apply(matcher.toMatchResult());
            }
        }
        return Optional.empty();
    }

    private static Phrase phrase(String log, Function<MatchResult, Optional<String>> words) {
        return new Phrase(Pattern.compile(log, Pattern.DOTALL), words);
    }

    private Optional<String> say(String key, Object... values) {
        return Optional.of(telling.tongue().say("story." + key, values));
    }

    private Optional<String> state(MatchResult match) {
        String marks = match.group(2);
        String chatters = marks.contains("chattering") ? "; " + telling.tongue().say("story.chattering") : "";
        String fleeting = marks.contains("fleeting") ? "; " + telling.tongue().say("story.fleeting") : "";
        return say("state." + match.group(1)).map(words -> words + chatters + fleeting);
    }

    private Optional<String> taken(MatchResult match) {
        return say("taken", telling.condition(match.group(1)), telling.condition(match.group(2)));
    }

    private Optional<String> acknowledged(MatchResult match) {
        String note = Optional.ofNullable(match.group(3)).orElse("");
        String way = telling.by(match.group(2)).strip();
        return note.isEmpty()
                ? say("acknowledged", contact(match.group(1)), way)
                : say("acknowledged.note", contact(match.group(1)), way, note);
    }

    private Optional<String> answeredWith(MatchResult match) {
        return say("answered-with", contact(match.group(2)), telling.condition(match.group(1)));
    }

    private Optional<String> shelved(MatchResult match) {
        String length = Spans.words(Duration.parse(match.group(2)), telling.tongue());
        return say("shelved", contact(match.group(1)), length, match.group(3));
    }

    private String contact(String id) {
        return telling.names().contact(id);
    }

    private String time(String instant) {
        return telling.clock().read(Instant.parse(instant));
    }

    /** {@code ": 18.4 ft (limit 18.0)"}, or nothing. */
    private String numbers(String group) {
        var limit = LIMIT.matcher(group.strip());
        String words = limit.replaceFirst(
                match -> Matcher.quoteReplacement("(" + telling.tongue().say("limit", match.group(1)) + ")"));
        return words.isEmpty() ? "" : ": " + words;
    }
}
