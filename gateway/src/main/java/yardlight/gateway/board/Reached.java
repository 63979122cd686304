package yardlight.gateway.board;

import java.time.Instant;
import java.time.ZoneOffset;
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
import yardlight.gateway.page.Tongue;

/** Puts into words by which lines of whom nothing has got through for long. Whoever is reached by all is not named. */
@Component
class Reached {

    private final KnownLines lines;

    Reached(KnownLines lines) {
        this.lines = lines;
    }

    List<Sheet.Person> of(Setup setup, Tongue tongue, Instant now) {
        Map<LineHealth.Key, LineHealth> known = lines.all();
        return setup.contacts().values().stream()
                .flatMap(contact -> of(contact, KnownLines.of(contact, known), tongue, now).stream())
                .toList();
    }

    static Optional<Sheet.Person> of(Contact contact, List<LineHealth> lines, Tongue tongue, Instant now) {
        String unproven = IntStream.range(0, lines.size())
                .filter(place -> !lines.get(place).proven(now))
                .mapToObj(place -> tongue.say(
                        "now.line",
                        Integer.toString(place + 1),
                        lines.get(place).key().channel()))
                .collect(Collectors.joining(", "));
        if (unproven.isEmpty()) {
            return Optional.empty();
        }
        var clock = new Clockface(ZoneOffset.UTC, now, tongue.locale());
        String reached = lines.stream()
                .flatMap(line -> line.provenAt().stream())
                .max(Instant::compareTo)
                .map(at -> tongue.say("now.reached", clock.ago(at)))
                .orElseGet(() -> tongue.say("now.unreached"));
        return Optional.of(
                new Sheet.Person(contact.id(), contact.name(), reached, tongue.say("now.unproven", unproven)));
    }
}
