package yardlight.gateway.reports;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardlight.db.log.LogLine;
import yardlight.gateway.page.Names;

/**
 * What a person did about an alarm, as the log says it. Each of these shows that they knew; that something was sent or
 * delivered does not.
 *
 * @param by id of the contact, or the login
 * @param name as the setup has it now
 * @param deed {@code acknowledged}, {@code shelved}, {@code unshelved}, {@code reset} or {@code note}; {@code answered-with}
 *     when what they answered was another alarm of the same cause that is not the lesser one
 * @param with the condition of that other alarm; empty for every other deed
 * @param way by which they answered; empty for what is done on the page only
 * @param line the log's line
 */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
record Answered(
        Instant at, String by, String name, String deed, Optional<String> way, Optional<String> with, long line) {

    private static final Pattern WORDS = Pattern.compile(
            "\\S+ (acknowledged|shelved|unshelved|reset|note) by ([^\\s:,]+)(?: by ([a-z-]+))?.*", Pattern.DOTALL);

    private static final Pattern WITH =
            Pattern.compile("\\S+ acknowledged with \\S+/([^\\s/]+) by (\\S+), is now \\S+");

    /** Oldest first. */
    static List<Answered> of(List<LogLine> lines, Names names) {
        return lines.stream()
                .filter(line -> line.what().equals("answer"))
                .flatMap(line -> of(line, names).or(() -> with(line, names)).stream())
                .toList();
    }

    private static Optional<Answered> of(LogLine line, Names names) {
        Matcher words = WORDS.matcher(line.words());
        return Optional.of(words)
                .filter(Matcher::matches)
                .map(found -> new Answered(
                        line.at(),
                        found.group(2),
                        names.contact(found.group(2)),
                        found.group(1),
                        Optional.ofNullable(found.group(3))
                                .filter(way -> found.group(1).equals("acknowledged")),
                        Optional.empty(),
                        line.line()));
    }

    /** Of an alarm that was answered along with another one. */
    private static Optional<Answered> with(LogLine line, Names names) {
        Matcher words = WITH.matcher(line.words());
        return Optional.of(words)
                .filter(Matcher::matches)
                .map(found -> new Answered(
                        line.at(),
                        found.group(2),
                        names.contact(found.group(2)),
                        "answered-with",
                        Optional.empty(),
                        Optional.of(found.group(1)),
                        line.line()));
    }
}
