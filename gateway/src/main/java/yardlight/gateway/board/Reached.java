package yardlight.gateway.board;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.springframework.stereotype.Component;
import yardlight.db.proof.KnownLines;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;

/** Puts into words when each person was last reached, and by which of their lines nothing has for long. */
@Component
class Reached {

    private final KnownLines lines;

    Reached(KnownLines lines) {
        this.lines = lines;
    }

    List<Sheet.Person> of(Setup setup, Instant now) {
        Map<LineHealth.Key, LineHealth> known = lines.all();
        return setup.contacts().values().stream()
                .map(contact -> of(contact, KnownLines.of(contact, known), now))
                .toList();
    }

    static Sheet.Person of(Contact contact, List<LineHealth> lines, Instant now) {
        Optional<Instant> last =
                lines.stream().flatMap(line -> line.provenAt().stream()).max(Instant::compareTo);
        String unproven = IntStream.range(0, lines.size())
                .filter(place -> !lines.get(place).proven(now))
                .mapToObj(place -> Names.line(place, lines.get(place).key().channel()))
                .collect(Collectors.joining(", "));
        return new Sheet.Person(
                contact.id(),
                contact.name(),
                last.map(at -> "last reached " + Clockface.ago(at, now) + " ago")
                        .orElse("not reached yet"),
                unproven.isEmpty() ? "" : "not proven for 30 days: " + unproven);
    }
}
