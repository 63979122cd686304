package yardlight.escalation;

import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Site;
import yardlight.escalation.wording.Circumstance;

/** Gathers what a text says beside the numbers of an alarm: who else is silent, whether the tanks fill, and what the
 * readings say. */
final class Circumstances {

    private final Draft draft;

    Circumstances(Draft draft) {
        this.draft = draft;
    }

    Circumstance of(Alarm alarm) {
        Optional<String> filling = BoxAlarms.feed(alarm.key())
                .filter(feed -> alarm.active())
                .filter(feed -> draft.setup()
                        .site(alarm.key().site())
                        .filter(site -> site.empties().contains(feed))
                        .isPresent())
                .flatMap(feed -> new FeedsNow(draft).filling(alarm.key().site()));
        return new Circumstance(
                filling,
                new Silences(draft).behind(alarm.key()).flatMap(this::shared),
                found(alarm),
                new Causes(draft).before(alarm));
    }

    /** What the readings of the point have to say, if it was they that began it. */
    private Optional<Circumstance.Found> found(Alarm alarm) {
        AlarmKey key = alarm.key();
        Point point = draft.setup().point(key.site(), key.point());
        boolean ours = alarm.active()
                && point.gauged()
                && draft.gauge(new Gauge.Key(key.site(), key.point())).holds(key.condition());
        return Optional.of(point).filter(any -> ours).map(any -> switch (key.condition()) {
            case Tanks.OVERFLOW -> new Circumstance.Found(new Tanks(draft).outlook(point, draft.now()));
            case Pumps.LESS -> new Circumstance.Found(Optional.empty(), new Standstill(draft).of(point));
            default -> new Circumstance.Found(Optional.empty());
        });
    }

    private Optional<Circumstance.Shared> shared(Absence absence) {
        List<Site> sites = absence.members().entrySet().stream()
                .filter(member -> member.getValue().back().isEmpty() || !absence.open())
                .flatMap(member -> Optional.ofNullable(draft.setup().boxes().get(member.getKey())).stream())
                .map(Box::site)
                .distinct()
                .flatMap(site -> draft.setup().site(site).stream())
                .toList();
        boolean link = absence.shared().kind() == Path.Kind.LINK;
        boolean own =
                sites.size() == 1 && sites.get(0).id().equals(absence.key().site());
        return sites.isEmpty() || own
                ? Optional.empty()
                : Optional.of(new Circumstance.Shared(link, absence.shared().name(), sites, absence.since()));
    }
}
