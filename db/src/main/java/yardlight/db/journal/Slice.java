package yardlight.db.journal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardlight.db.columns.NoticeColumns.KeptNotice;
import yardlight.escalation.Changes;
import yardlight.escalation.Picture;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Flood;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.shutin.Standing;
import yardlight.escalation.swap.Offer;

/**
 * The part of the stored situation that was looked at. Each {@code need} reads what is missing in one query and never
 * reads twice: what was decided since must not be covered by what is stored. It outlives a transaction for as long as
 * nobody else writes, see {@link Memory}.
 */
final class Slice {

    final Picture picture;
    final Kept kept = new Kept();

    /** What was read since somebody last cleared these. */
    final List<Alarm> newAlarms = new ArrayList<>();

    final List<Callout> newCallouts = new ArrayList<>();

    private final Reads reads;
    private final Set<AlarmKey> alarms = new HashSet<>();
    private final Set<String> alarmsOf = new HashSet<>();
    private final Set<String> calloutsOf = new HashSet<>();
    private final Set<String> floods = new HashSet<>();
    private final Set<String> callouts = new HashSet<>();
    private final Set<String> notices = new HashSet<>();
    private final Set<String> unsent = new HashSet<>();
    private final Set<String> boxes = new HashSet<>();
    private final Set<Gauge.Key> gauges = new HashSet<>();
    private final Set<Path> paths = new HashSet<>();
    private final Set<String> standings = new HashSet<>();
    private final Set<String> offers = new HashSet<>();
    private final Set<String> offersOf = new HashSet<>();
    private boolean desks;
    private boolean lines;
    private Optional<AnswerCodes> codes = Optional.empty();

    Slice(Reads reads, Setup setup) {
        this.reads = reads;
        this.picture = new Picture(setup);
    }

    /**
     * The same with nothing in it but what there is one of for each contact or point, and the codes: that stays small.
     *
     * @param withBoxes whether what is known of the boxes stays as well
     */
    Slice afresh(boolean withBoxes) {
        var fresh = new Slice(reads, picture.setup());
        fresh.codes = codes;
        fresh.desks = desks;
        fresh.kept.desks.putAll(kept.desks);
        fresh.show(List.copyOf(kept.desks.values()), List.of(), Map.of());
        if (withBoxes) {
            fresh.boxes.addAll(boxes);
            fresh.kept.boxes.putAll(kept.boxes);
            fresh.show(List.of(), List.copyOf(kept.boxes.values()), Map.of());
        }
        fresh.lines = lines;
        fresh.show(kept.lines.values());
        fresh.gauges.addAll(gauges);
        fresh.kept.gauges.putAll(kept.gauges);
        fresh.picture.apply(Changes.gauged(List.copyOf(kept.gauges.values())));
        return fresh;
    }

    /** Lays a decision over what was read. What it put down is not to be read over it. */
    void apply(Changes changes) {
        changes.alarms().forEach(alarm -> alarms.add(alarm.key()));
        changes.notices().forEach(notice -> notices.add(notice.id()));
        changes.boxes().forEach(watch -> boxes.add(watch.box()));
        changes.absences().forEach(absence -> paths.add(absence.path()));
        changes.gauges().forEach(gauge -> gauges.add(gauge.key()));
        changes.standings().forEach(standing -> standings.add(standing.site()));
        changes.offers().forEach(offer -> offers.add(offer.id()));
        floods.addAll(changes.floods().keySet());
        changes.callouts().forEach(callout -> {
            if (callouts.add(callout.id())) {
                unsent.add(callout.id());
            }
        });
        picture.apply(changes);
    }

    /** The next answer code; which are taken is read before the first one. */
    int nextCode(int last) {
        if (codes.isEmpty()) {
            codes = Optional.of(reads.codes(last));
        }
        return codes.get().next();
    }

    /** The answer code up to 999 that was given out last. */
    int lastCode(int last) {
        return codes.map(AnswerCodes::last).orElse(last);
    }

    /** The changes are stored. */
    void stored(Changed changed, Collection<KeptNotice> written) {
        kept.absorb(changed, written);
        codes.ifPresent(all -> changed.callouts.values().forEach(all::follow));
        codes.ifPresent(all -> changed.offers.values().forEach(all::follow));
    }

    void needAlarm(AlarmKey key) {
        if (!alarms.contains(key)) {
            needAlarms(List.of(key));
        }
    }

    void needAlarmsAt(String site) {
        if (!alarmsOf.contains(site)) {
            needAlarmsAt(List.of(site));
        }
    }

    void needCalloutsAt(String site) {
        if (!calloutsOf.contains(site)) {
            needCalloutsAt(List.of(site));
        }
    }

    void needAlarms(Collection<AlarmKey> keys) {
        reads.alarms(keys.stream().filter(alarms::add).toList()).forEach(this::keep);
    }

    void needSites(Collection<String> ids) {
        needAlarmsAt(ids);
        needCalloutsAt(ids);
    }

    private void needAlarmsAt(Collection<String> ids) {
        reads.alarmsAt(ids.stream().filter(alarmsOf::add).toList()).stream()
                .filter(alarm -> alarms.add(alarm.key()))
                .forEach(this::keep);
    }

    private void needCalloutsAt(Collection<String> ids) {
        reads.calloutsAt(ids.stream().filter(calloutsOf::add).toList()).stream()
                .filter(callout -> callouts.add(callout.id()))
                .forEach(this::keep);
    }

    void needFlood(String site) {
        if (!floods.contains(site)) {
            needFloods(List.of(site));
        }
    }

    void needFloods(Collection<String> ofSites) {
        reads.floods(ofSites.stream().filter(floods::add).toList()).forEach(one -> {
            kept.floods.put(one.site(), one.flood());
            show(List.of(), List.of(), Map.of(one.site(), one.flood()));
        });
    }

    void needCallouts(Collection<String> ids) {
        reads.callouts(ids.stream().filter(callouts::add).toList()).forEach(this::keep);
    }

    void needNotices(Collection<String> ids) {
        reads.notices(ids.stream().filter(notices::add).toList()).forEach(this::keep);
    }

    /**
     * Whoever asks for the notices of a callout has looked at the callout before, or is just making it: one that was not
     * looked at is new and has none. Without this each new callout of a batch would cost a query.
     */
    void needUnsent(Collection<String> ofCallouts) {
        reads
                .unsent(ofCallouts.stream()
                        .filter(callouts::contains)
                        .filter(unsent::add)
                        .toList())
                .stream()
                .filter(one -> notices.add(one.notice().id()))
                .forEach(this::keep);
    }

    /** What is in the outbox now; not remembered, for it is asked for only when a carrier goes down. */
    void needQueued(String channel) {
        reads.queued(channel).stream()
                .filter(one -> notices.add(one.notice().id()))
                .forEach(this::keep);
    }

    void needBox(String id) {
        if (!boxes.contains(id)) {
            needBoxes(List.of(id));
        }
    }

    void needBoxes(Collection<String> ids) {
        List<BoxWatch> found = reads.boxes(ids.stream().filter(boxes::add).toList());
        found.forEach(watch -> kept.boxes.put(watch.box(), watch));
        show(List.of(), found, Map.of());
    }

    void needAbsences(Collection<Path> of) {
        List<Absence> found = reads.absences(of.stream().filter(paths::add).toList());
        found.forEach(absence -> kept.absences.put(absence.alarm(), absence));
        picture.apply(Changes.of(found));
    }

    void needGauges(Collection<Gauge.Key> of) {
        List<Gauge> found = reads.gauges(of.stream().filter(gauges::add).toList());
        found.forEach(gauge -> kept.gauges.put(gauge.key(), gauge));
        picture.apply(Changes.gauged(found));
    }

    void needStandings(Collection<String> ofSites) {
        List<Standing> found =
                reads.standings(ofSites.stream().filter(standings::add).toList());
        found.forEach(standing -> kept.standings.put(standing.site(), standing));
        picture.apply(Changes.standings(found));
    }

    void needOffers(Collection<String> ids) {
        keepOffers(reads.offers(ids.stream().filter(offers::add).toList()));
    }

    /** What was decided of one since is not to be covered by what is stored. */
    void needOffersOf(String roster) {
        if (offersOf.add(roster)) {
            keepOffers(reads.openOffers(List.of(roster)).stream()
                    .filter(offer -> offers.add(offer.id()))
                    .toList());
        }
    }

    private void keepOffers(List<Offer> found) {
        found.forEach(offer -> kept.offers.put(offer.id(), offer));
        picture.apply(Changes.offers(found));
    }

    void needDesks() {
        if (!desks) {
            desks = true;
            List<Desk> found = reads.desks();
            found.forEach(desk -> kept.desks.put(desk.contact(), desk));
            show(found, List.of(), Map.of());
        }
    }

    void needLines() {
        if (!lines) {
            lines = true;
            show(reads.lines());
        }
    }

    private void keep(Alarm alarm) {
        newAlarms.add(alarm);
        kept.alarms.put(alarm.key(), alarm);
        picture.apply(new Changes(List.of(alarm), List.of(), List.of(), List.of(), List.of(), Map.of()));
    }

    private void keep(Callout callout) {
        newCallouts.add(callout);
        kept.callouts.put(callout.id(), callout);
        picture.apply(new Changes(List.of(), List.of(callout), List.of(), List.of(), List.of(), Map.of()));
    }

    private void keep(KeptNotice one) {
        kept.notices.put(one.notice().id(), one);
        picture.apply(new Changes(List.of(), List.of(), List.of(one.notice()), List.of(), List.of(), Map.of()));
    }

    private void show(List<Desk> ofPeople, List<BoxWatch> ofBoxes, Map<String, Flood> ofSites) {
        picture.apply(new Changes(List.of(), List.of(), List.of(), ofPeople, ofBoxes, ofSites));
    }

    private void show(Collection<LineHealth> ofPeople) {
        ofPeople.forEach(line -> kept.lines.put(line.key(), line));
        picture.apply(
                new Changes(List.of(), List.of(), List.of(), List.of(), List.of(), Map.of(), List.copyOf(ofPeople)));
    }
}
