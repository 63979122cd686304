package yardlight.escalation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Flood;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.shutin.Standing;
import yardlight.escalation.swap.Offer;

/**
 * A situation in memory: the whole of it in a simulation, the slice that a batch needs in the gateway. Not for use by
 * several threads at once.
 */
public final class Picture implements Situation {

    private final Map<String, TreeMap<AlarmKey, Alarm>> alarms = new HashMap<>();
    private final Map<String, Callout> callouts = new LinkedHashMap<>();
    private final Map<String, TreeMap<String, Callout>> live = new HashMap<>();
    private final Map<String, Notice> notices = new LinkedHashMap<>();
    private final Map<String, TreeMap<String, Notice>> unsent = new HashMap<>();
    private final Map<String, Desk> desks = new HashMap<>();
    private final Map<String, BoxWatch> boxes = new HashMap<>();
    private final Map<Path, Absence> absences = new LinkedHashMap<>();
    private final Map<String, Flood> floods = new HashMap<>();
    private final Map<LineHealth.Key, LineHealth> lines = new HashMap<>();
    private final Map<Gauge.Key, Gauge> gauges = new HashMap<>();
    private final Map<String, Standing> standings = new HashMap<>();
    private final TreeMap<String, Offer> offers = new TreeMap<>();
    private final TreeMap<String, Notice> open = new TreeMap<>();
    private Setup setup;

    public Picture(Setup setup) {
        this.setup = setup;
    }

    public void setup(Setup next) {
        setup = next;
    }

    /** Takes over what a decision changed, or what was read from storage. */
    public void apply(Changes changes) {
        changes.alarms()
                .forEach(alarm -> alarms.computeIfAbsent(alarm.key().site(), any -> new TreeMap<>())
                        .put(alarm.key(), alarm));
        changes.callouts().forEach(this::keep);
        changes.notices().forEach(this::keep);
        changes.desks().forEach(desk -> desks.put(desk.contact(), desk));
        changes.boxes().forEach(watch -> boxes.put(watch.box(), watch));
        changes.absences().forEach(absence -> absences.put(absence.path(), absence));
        floods.putAll(changes.floods());
        changes.lines().forEach(line -> lines.put(line.key(), line));
        changes.gauges().forEach(gauge -> gauges.put(gauge.key(), gauge));
        changes.standings().forEach(standing -> standings.put(standing.site(), standing));
        changes.offers().forEach(offer -> offers.put(offer.id(), offer));
    }

    private void keep(Callout callout) {
        callouts.put(callout.id(), callout);
        TreeMap<String, Callout> atSite = live.computeIfAbsent(callout.facts().site(), any -> new TreeMap<>());
        if (callout.live()) {
            atSite.put(callout.id(), callout);
        } else {
            atSite.remove(callout.id());
        }
    }

    private void keep(Notice notice) {
        notices.put(notice.id(), notice);
        keep(notice, open);
        notice.callouts().forEach(callout -> keep(notice, unsent.computeIfAbsent(callout, any -> new TreeMap<>())));
    }

    /** Among those that were not sent yet, or not any more. */
    private static void keep(Notice notice, Map<String, Notice> among) {
        if (notice.state() == NoticeState.QUEUED || notice.state() == NoticeState.HELD) {
            among.put(notice.id(), notice);
        } else {
            among.remove(notice.id());
        }
    }

    /** Every callout that is known, over or not, oldest first. */
    public List<Callout> callouts() {
        return callouts.values().stream().sorted(Callout.OLDEST_FIRST).toList();
    }

    /** Every notice that is known, in the order in which they were made. */
    public List<Notice> notices() {
        return List.copyOf(notices.values());
    }

    /** Every alarm that is known, normal ones too. */
    public List<Alarm> alarms() {
        var all = new ArrayList<Alarm>();
        new TreeMap<>(alarms).values().forEach(atSite -> all.addAll(atSite.values()));
        return all;
    }

    @Override
    public Setup setup() {
        return setup;
    }

    @Override
    public Alarm alarm(AlarmKey key) {
        Alarm known = alarms.getOrDefault(key.site(), new TreeMap<>()).get(key);
        return known != null ? known : Alarm.normal(key);
    }

    @Override
    public List<Alarm> alarmsAt(String site) {
        return alarms.getOrDefault(site, new TreeMap<>()).values().stream()
                .filter(Alarm::live)
                .toList();
    }

    @Override
    public Optional<Callout> callout(String id) {
        return Optional.ofNullable(callouts.get(id));
    }

    @Override
    public List<Callout> calloutsAt(String site) {
        return live.getOrDefault(site, new TreeMap<>()).values().stream()
                .sorted(Callout.OLDEST_FIRST)
                .toList();
    }

    @Override
    public Flood flood(String site) {
        return floods.getOrDefault(site, Flood.NONE);
    }

    @Override
    public Desk desk(String contact) {
        return desks.getOrDefault(contact, Desk.empty(contact));
    }

    @Override
    public Optional<Notice> notice(String id) {
        return Optional.ofNullable(notices.get(id));
    }

    @Override
    public List<Notice> unsent(String callout) {
        return List.copyOf(unsent.getOrDefault(callout, new TreeMap<>()).values());
    }

    @Override
    public List<Notice> queued(String channel) {
        return open.values().stream()
                .filter(notice -> Carriers.queued(setup, notice, channel))
                .toList();
    }

    @Override
    public Optional<BoxWatch> box(String id) {
        return Optional.ofNullable(boxes.get(id));
    }

    /** The newest silence of each path. */
    public List<Absence> absences() {
        return List.copyOf(absences.values());
    }

    @Override
    public Optional<Absence> absence(Path path) {
        return Optional.ofNullable(absences.get(path));
    }

    @Override
    public LineHealth health(LineHealth.Key line) {
        LineHealth known = lines.get(line);
        return known != null ? known : LineHealth.unknown(line);
    }

    @Override
    public Gauge gauge(Gauge.Key key) {
        Gauge known = gauges.get(key);
        return known != null ? known : Gauge.unread(key);
    }

    @Override
    public Standing standing(String site) {
        return standings.getOrDefault(site, Standing.none(site));
    }

    @Override
    public Optional<Offer> offer(String id) {
        return Optional.ofNullable(offers.get(id));
    }

    @Override
    public List<Offer> offers(String roster) {
        return offers.values().stream()
                .filter(offer -> offer.roster().equals(roster) && offer.state().takeable())
                .toList();
    }
}
