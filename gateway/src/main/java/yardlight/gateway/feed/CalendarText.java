package yardlight.gateway.feed;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.io.text.ICalWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * Writes a calendar. Lines are folded here and not by the library: RFC 5545 3.1 counts octets, the library counts characters,
 * and a line of Spanish has more octets than characters.
 */
final class CalendarText {

    private static final int MOST_OCTETS = 75;
    private static final String BREAK = "\r\n";

    private CalendarText() {}

    static String of(ICalendar calendar) {
        var text = new StringWriter();
        try (var writer = new ICalWriter(text, ICalVersion.V2_0)) {
            writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
            writer.write(calendar);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        var folded = new StringBuilder();
        text.toString().lines().forEach(line -> fold(line, folded));
        return folded.toString();
    }

    private static void fold(String line, StringBuilder to) {
        int octets = 0;
        for (int at = 0; at < line.length(); ) {
            int end = line.offsetByCodePoints(at, 1);
            String character = line.substring(at, end);
            int more = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + more > MOST_OCTETS) {
                to.append(BREAK).append(' ');
                octets = 1;
            }
            to.append(character);
            octets += more;
            at = end;
        }
        to.append(BREAK);
    }
}
