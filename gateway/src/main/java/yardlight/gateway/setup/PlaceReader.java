package yardlight.gateway.setup;

import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Site;
import yardlight.escalation.tank.Response;
import yardlight.gateway.document.Fields;

/** Reads sites, boxes and points. */
final class PlaceReader {

    static final String PRIORITY_RULE = "must be low, medium, high or critical";
    private static final Duration USUAL_GRACE = Duration.ofMinutes(2);
    private static final Duration LONGEST_HEARTBEAT = Duration.ofDays(31);
    private static final Duration LONGEST_DELAY = Duration.ofDays(1);
    private static final Duration LONGEST_REALARM = Duration.ofDays(31);

    private PlaceReader() {}

    static Site site(Fields fields) {
        String id = Ids.of(fields);
        var site = new Site(
                id,
                Ids.name(fields, id),
                Zones.needed(fields),
                Ids.reference(fields, "ladder"),
                feeds(fields, "fills", Site.FILLS),
                feeds(fields, "empties", Site.EMPTIES),
                fields.flag("inService").orElse(true),
                fields.object("response").map(EquipmentReader::response).orElse(Response.USUAL),
                ShutInReader.terms(fields));
        fields.nothingElse();
        return site;
    }

    private static Set<String> feeds(Fields fields, String name, Set<String> otherwise) {
        return fields.has(name) ? Set.copyOf(fields.texts(name)) : otherwise;
    }

    static Box box(Fields fields) {
        String id = Ids.of(fields);
        Optional<Fields> heartbeat = fields.object("heartbeat");
        Optional<Duration> every = heartbeat.flatMap(
                beat -> beat.needs("every").duration("every", Duration.ofSeconds(1), LONGEST_HEARTBEAT));
        Optional<Duration> grace = heartbeat.flatMap(beat -> beat.duration("grace", Duration.ZERO, LONGEST_HEARTBEAT));
        var box = new Box(
                id,
                Ids.reference(fields, "site"),
                fields.text("feed", Ids.LONGEST_NAME).filter(name -> !name.isEmpty()),
                fields.text("link", Ids.LONGEST_NAME).filter(name -> !name.isEmpty()),
                fields.flag("battery").orElse(false),
                every,
                grace.orElse(USUAL_GRACE),
                heartbeat.flatMap(beat -> beat.flag("learned")).orElse(false),
                fields.flag("signed").orElse(false));
        heartbeat.ifPresent(Fields::nothingElse);
        fields.nothingElse();
        return box;
    }

    static Point point(Fields fields) {
        String id = Ids.of(fields);
        var point = new Point(
                id,
                Ids.reference(fields, "site"),
                Ids.name(fields, id),
                fields.text("unit", 16),
                fields.as("priority", PRIORITY_RULE, Priority::of),
                timing(id, fields),
                Set.copyOf(fields.texts("suppressedWhile")),
                fields.flag("inService").orElse(true),
                RulesReader.rules(fields),
                EquipmentReader.equipment(fields));
        fields.nothingElse();
        return point;
    }

    private static Timing timing(String id, Fields fields) {
        return new Timing(
                fields.duration("onDelay", Duration.ZERO, LONGEST_DELAY).orElse(Duration.ZERO),
                fields.duration("offDelay", Duration.ZERO, LONGEST_DELAY).orElse(Duration.ZERO),
                fields.flag("latching").orElse(false),
                fields.duration("reAlarm", Duration.ofMinutes(1), LONGEST_REALARM),
                Point.nuisance(id));
    }
}
