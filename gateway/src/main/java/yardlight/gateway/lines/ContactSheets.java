package yardlight.gateway.lines;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import yardlight.escalation.proof.AllsWell;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.setup.Contact;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;

/** Puts what is known of a contact's lines into words. */
final class ContactSheets {

    private static final int EVERY_DAY = 7;

    private ContactSheets() {}

    static ContactSheet of(Contact contact, List<KnownLine> lines, Instant now) {
        var clock = new Clockface(contact.zone(), now, Locale.ENGLISH);
        return new ContactSheet(
                contact.id(),
                contact.name(),
                contact.allsWell().map(ContactSheets::allsWell).orElse(""),
                lines.stream().map(line -> way(line, clock)).toList());
    }

    private static String allsWell(AllsWell schedule) {
        String days = schedule.days().size() == EVERY_DAY
                ? "every day"
                : schedule.days().stream()
                        .map(day -> day.name().substring(0, 1)
                                + day.name().substring(1, 3).toLowerCase(Locale.ROOT))
                        .collect(Collectors.joining(", "));
        return "All's-well " + days + " at " + schedule.at();
    }

    private static ContactSheet.Way way(KnownLine known, Clockface clock) {
        LineHealth line = known.health();
        return new ContactSheet.Way(
                known.place() + 1,
                Names.line(known.place(), line.key().channel()),
                known.address(),
                line.provenAt()
                        .map(at -> "Last reached " + Clockface.ago(at, clock.now()) + " ago")
                        .orElse("Nothing has shown yet that it works"),
                line.proven(clock.now()),
                facts(line, clock));
    }

    private static List<String> facts(LineHealth line, Clockface clock) {
        var facts = new ArrayList<String>();
        line.handedOverAt().ifPresent(at -> facts.add("A carrier took a text " + clock.read(at)));
        line.deliveredAt().ifPresent(at -> facts.add("A receipt said that one arrived " + clock.read(at)));
        line.answeredAt().ifPresent(at -> facts.add("Somebody answered one " + clock.read(at)));
        line.trouble()
                .ifPresent(trouble -> facts.add(
                        "Last trouble " + clock.read(trouble.at()) + ", in the carrier's words: " + trouble.words()));
        line.test()
                .ifPresent(test -> facts.add("Test sent " + clock.read(test.at())
                        + (test.answered() ? ", answered" : ", no answer to it yet")));
        return facts;
    }
}
