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
 * @param deed {@code acknowledged}, {@code shelved}, {@code unshelved}, {@code reset} or {@code note}
 * @param way by which they answered; empty for what is done on the page only
 * @param line the log's line
 */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
record Answered(Instant at, String by, String name, String deed, Optional<String> way, long line) {

    private static final Pattern WORDS = Pattern.compile(
            "\\S+ (acknowledged|shelved|unshelved|reset|note) by ([^\\s:,]+)(?: by ([a-z-]+))?.*", Pattern.DOTALL);

    /** Oldest first. */
    static List<Answered> of(List<LogLine> lines, Names names) {
        return lines.stream()
                .filter(line -> line.what().equals("answer"))
                .flatMap(line -> of(line, names).stream())
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
                        line.line()));
    }
}
