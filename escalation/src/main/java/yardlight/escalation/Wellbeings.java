package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Site;
import yardlight.escalation.wording.Way;
import yardlight.escalation.wording.Wellbeing;

/** Gathers what an all's-well says: what is true at the very second of the decision. */
final class Wellbeings {

    private final Draft draft;
    private final Texts texts;

    Wellbeings(Draft draft, Texts texts) {
        this.draft = draft;
        this.texts = texts;
    }

    Wellbeing of(Notice notice, Contact contact, Optional<Wellbeing.Uncovered> uncovered) {
        var sites = new SitesNow(draft);
        List<Site> watched = sites.watched();
        List<Alarm> standing = standing();
        Instant now = draft.now();
        boolean late = Duration.between(notice.queuedAt(), now).compareTo(AllsWells.LATE) > 0;
        return new Wellbeing(
                watched.size(),
                sites.silent(),
                draft.setup().sites().size() - watched.size(),
                standing.stream()
                        .filter(alarm -> !alarm.state().withheld())
                        .sorted(Texts.WORST_FIRST)
                        .map(texts::subject)
                        .toList(),
                (int) standing.stream()
                        .filter(alarm -> alarm.state().withheld())
                        .count(),
                proof(contact),
                new Wellbeing.Moment(now, contact.zone(), late ? Optional.of(notice.queuedAt()) : Optional.empty()),
                uncovered);
    }

    private List<Alarm> standing() {
        Set<String> sites = new LinkedHashSet<>(draft.setup().sites().keySet());
        sites.add(Site.GATEWAY);
        return sites.stream()
                .flatMap(site -> draft.alarmsAt(site).stream())
                .filter(alarm -> alarm.state() != AlarmState.NORMAL)
                .toList();
    }

    private Wellbeing.Proof proof(Contact contact) {
        List<LineHealth> lines = new Proofs(draft).of(contact);
        List<Way> unproven = IntStream.range(0, lines.size())
                .filter(place -> !lines.get(place).proven(draft.now()))
                .mapToObj(place -> way(lines, place))
                .toList();
        Optional<Integer> newest = IntStream.range(0, lines.size())
                .boxed()
                .filter(place -> lines.get(place).provenAt().isPresent())
                .max(Comparator.comparing(place -> lines.get(place).provenAt().orElseThrow()));
        return new Wellbeing.Proof(
                unproven,
                newest.map(place -> way(lines, place)),
                newest.map(place -> days(lines.get(place).provenAt().orElseThrow(), contact))
                        .orElse(0L));
    }

    private static Way way(List<LineHealth> lines, int place) {
        return new Way(place + 1, lines.get(place).key().channel());
    }

    /** Nights in between, where they live. */
    private long days(Instant at, Contact contact) {
        LocalDate then = at.atZone(contact.zone()).toLocalDate();
        return ChronoUnit.DAYS.between(then, draft.now().atZone(contact.zone()).toLocalDate());
    }
}
