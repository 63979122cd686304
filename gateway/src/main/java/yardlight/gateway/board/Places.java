package yardlight.gateway.board;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Telling;
import yardlight.gateway.page.Tongue;

/** Puts sites into words: those in alarm with their alarms, the others with when they last spoke. */
final class Places {

    /** So many alarms are told at length; a flood of more comes in lines, so that the page stays small on a slow link. */
    static final int CARDS = 20;

    /** More quiet sites than these are folded away. */
    static final int SHOWN = 12;

    private final Setup setup;
    private final Map<String, BoxWatch> watches;
    private final Tongue tongue;
    private final Instant now;

    Places(Setup setup, Map<String, BoxWatch> watches, Tongue tongue, Instant now) {
        this.setup = setup;
        this.watches = watches;
        this.tongue = tongue;
        this.now = now;
    }

    /** @param alarms the most urgent first; so come their sites */
    List<Sheet.Place> of(List<RecordedAlarm> alarms) {
        var bySite = new LinkedHashMap<String, List<RecordedAlarm>>();
        alarms.forEach(one -> bySite.computeIfAbsent(one.alarm().key().site(), any -> new ArrayList<>())
                .add(one));
        var places = new ArrayList<Sheet.Place>();
        int room = CARDS;
        for (Map.Entry<String, List<RecordedAlarm>> site : bySite.entrySet()) {
            int told = Math.min(room, site.getValue().size());
            places.add(place(site.getKey(), site.getValue(), told));
            room -= told;
        }
        return places;
    }

    private Sheet.Place place(String site, List<RecordedAlarm> alarms, int told) {
        Cards cards = cards(site);
        return new Sheet.Place(
                site,
                names().site(site),
                setup.site(site).isPresent(),
                heard(site),
                alarms.stream().limit(told).map(cards::of).toList(),
                alarms.stream().skip(told).map(cards::row).toList());
    }

    List<Sheet.Row> rows(List<RecordedAlarm> alarms) {
        return alarms.stream()
                .map(one -> cards(one.alarm().key().site()).row(one))
                .toList();
    }

    Sheet.Quiet quiet(Set<String> inAlarm) {
        List<Site> sites = setup.sites().values().stream()
                .filter(site -> !inAlarm.contains(site.id()))
                .toList();
        Optional<Site> longest = sites.stream()
                .filter(site -> last(site.id()).isPresent())
                .min(Comparator.comparing(site -> last(site.id()).orElseThrow()));
        return new Sheet.Quiet(
                sites.stream()
                        .map(site -> new Sheet.QuietPlace(site.id(), site.name(), heard(site.id())))
                        .toList(),
                sites.size() > SHOWN,
                longest.map(site -> tongue.say("now.longest", site.name(), heard(site.id())))
                        .orElse(""));
    }

    private String heard(String site) {
        if (setup.boxesAt(site).isEmpty()) {
            return tongue.say("now.no-box");
        }
        return last(site)
                .map(at -> tongue.say("now.heard", new Clockface(names().zone(site), now, tongue.locale()).ago(at)))
                .orElseGet(() -> tongue.say("now.never"));
    }

    private Optional<Instant> last(String site) {
        return setup.boxesAt(site).stream()
                .flatMap(box -> Optional.ofNullable(watches.get(box.id())).stream())
                .map(BoxWatch::heardAt)
                .max(Instant::compareTo);
    }

    private Cards cards(String site) {
        return new Cards(new Telling(tongue, names(), new Clockface(names().zone(site), now, tongue.locale())));
    }

    private Names names() {
        return new Names(setup);
    }
}
