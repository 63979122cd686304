package yardlight.gateway.sites;

import java.text.Normalizer;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.Alarms;
import yardlight.db.alarm.HeardBoxes;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.setup.SetupInForce;

/** All sites, in a line each. */
@Component
class SiteRows {

    /**
     * One site.
     *
     * @param alarm whether something is in alarm there
     * @param state in words
     * @param heard when it last spoke
     */
    record Row(String id, String name, boolean alarm, String state, String heard) {}

    private final Alarms alarms;
    private final HeardBoxes boxes;
    private final SetupInForce inForce;
    private final InstantSource clock;

    SiteRows(Alarms alarms, HeardBoxes boxes, SetupInForce inForce, InstantSource clock) {
        this.alarms = alarms;
        this.boxes = boxes;
        this.inForce = inForce;
        this.clock = clock;
    }

    /** @param part of the name or the id; empty for all */
    List<Row> like(String part, Tongue tongue) {
        Setup setup = inForce.setup();
        Map<String, Long> current = alarms.countedBySite();
        Map<String, BoxWatch> watches = boxes.all();
        String wanted = plain(part);
        return setup.sites().values().stream()
                .filter(site -> plain(site.name() + " " + site.id()).contains(wanted))
                .map(site -> row(site, current.getOrDefault(site.id(), 0L), last(setup, site, watches), tongue))
                .toList();
    }

    private Row row(Site site, long count, Optional<Instant> heard, Tongue tongue) {
        var clockface = new Clockface(site.zone(), clock.instant(), tongue.locale());
        String well = site.inService() ? tongue.say("sites.well") : tongue.say("sites.out");
        return new Row(
                site.id(),
                site.name(),
                count > 0,
                count == 0 ? well : tongue.count("sites.alarms", count),
                heard.map(at -> tongue.say("sites.heard", clockface.ago(at), clockface.read(at)))
                        .orElseGet(() -> tongue.say("sites.never")));
    }

    private static Optional<Instant> last(Setup setup, Site site, Map<String, BoxWatch> watches) {
        return setup.boxesAt(site.id()).stream()
                .flatMap(box -> Optional.ofNullable(watches.get(box.id())).stream())
                .map(BoxWatch::heardAt)
                .max(Instant::compareTo);
    }

    /** Without accents and capitals: nobody types them to find something. */
    private static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .strip();
    }
}
