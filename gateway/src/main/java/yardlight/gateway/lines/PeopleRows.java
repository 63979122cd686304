package yardlight.gateway.lines;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.setup.Contact;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;

/** Puts into words how each person can be reached now. */
record PeopleRows(Tongue tongue, Instant now) {

    /**
     * One person.
     *
     * @param reached when something last showed that they can be reached
     * @param unproven their lines that nothing has shown to work for 30 days; may be empty
     * @param quiet until when they have quiet hours; empty when they have none now
     */
    record Row(String id, String name, String reached, String unproven, String quiet) {}

    Row of(Contact contact, List<LineHealth> lines) {
        var clock = new Clockface(contact.zone(), now, tongue.locale());
        Optional<Instant> last =
                lines.stream().flatMap(line -> line.provenAt().stream()).max(Instant::compareTo);
        String unproven = IntStream.range(0, lines.size())
                .filter(place -> !lines.get(place).proven(now))
                .mapToObj(place -> tongue.say(
                        "people.line", place + 1, lines.get(place).key().channel()))
                .collect(Collectors.joining(", "));
        Optional<QuietHours> quiet =
                contact.quiet().stream().filter(hours -> hours.covers(now)).findFirst();
        return new Row(
                contact.id(),
                contact.name(),
                last.map(at -> tongue.say("people.reached", clock.read(at)))
                        .orElseGet(() -> tongue.say("people.never")),
                unproven.isEmpty() ? "" : tongue.say("people.unproven", unproven),
                quiet.map(hours -> tongue.say("people.quiet.now", clock.read(hours.endAfter(now))))
                        .orElse(""));
    }
}
