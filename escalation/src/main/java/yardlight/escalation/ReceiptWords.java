package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import yardlight.escalation.notice.Awaited;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Setup;

/** How the log speaks of receipts that do not come. */
final class ReceiptWords {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("h:mm a", Locale.ENGLISH);

    private ReceiptWords() {}

    /** {@code taken by smpp at 2:13 AM but no receipt for 2 min}, by the clock of whom it was for. */
    static String missing(Setup setup, Notice notice, Awaited word, Instant now) {
        ZoneId zone = Optional.ofNullable(setup.contacts().get(notice.contact()))
                .map(Contact::zone)
                .orElse(ZoneOffset.UTC);
        String way = setup.line(notice.contact(), notice.line())
                .map(Line::channel)
                .map(channel -> " by " + channel)
                .orElse("");
        return "taken" + way + " at " + CLOCK.format(word.since().atZone(zone)) + " but no receipt for "
                + span(Duration.between(word.since(), now));
    }

    private static String span(Duration length) {
        return length.toMinutes() < 2 ? length.toSeconds() + " s" : length.toMinutes() + " min";
    }
}
