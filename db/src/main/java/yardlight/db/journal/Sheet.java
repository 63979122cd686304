package yardlight.db.journal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yardlight.escalation.Changes;
import yardlight.escalation.Situation;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Flood;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.shutin.Standing;
import yardlight.escalation.swap.Offer;

/**
 * The situation for one transaction: what is stored, with what was decided so far laid over it. {@link #prepare} reads a
 * whole batch in a fixed number of queries; whatever is asked for beyond that is read when it is asked.
 */
public final class Sheet implements Situation {

    private final Slice slice;
    private final int codeBefore;
    private final Changed changed = new Changed();

    /** @param codeBefore the answer code up to 999 that was given out last */
    Sheet(Slice slice, int codeBefore) {
        this.slice = slice;
        this.codeBefore = codeBefore;
    }

    /** The next answer code: the next in turn that no live callout has. */
    public int nextCode() {
        return slice.nextCode(codeBefore);
    }

    int lastCode() {
        return slice.lastCode(codeBefore);
    }

    /** Reads what the batch is going to ask for. What belongs to something known was read together with it. */
    public void prepare(Wants wants) {
        slice.newAlarms.clear();
        slice.newCallouts.clear();
        slice.needBoxes(wants.due);
        wants.due.forEach(id -> slice.picture.box(id).ifPresent(wants::judge));
        if (wants.calls()) {
            slice.needDesks();
        }
        List<String> callouts = prepareNotices(wants);
        callouts.addAll(wants.callouts);
        slice.needCallouts(callouts);
        slice.needFloods(wants.floods);
        var sites = new ArrayList<>(wants.sites);
        wants.floods.stream().filter(site -> slice.picture.flood(site).on()).forEach(sites::add);
        slice.needSites(sites);
        if (wants.calls()) {
            slice.needAlarmsAt(Site.GATEWAY);
        }
        var alarms = new ArrayList<>(wants.alarms);
        slice.newCallouts.forEach(callout -> alarms.addAll(callout.facts().alarms()));
        if (wants.calls()) {
            setup().channels().forEach(channel -> alarms.add(Setup.carrier(channel)));
        }
        slice.needAlarms(alarms);
        slice.needCallouts(slice.newAlarms.stream()
                .flatMap(alarm -> alarm.callout().stream())
                .toList());
        slice.needUnsent(slice.newCallouts.stream().map(Callout::id).toList());
        slice.needBoxes(wants.boxes);
        slice.needAbsences(wants.paths);
        slice.needGauges(wants.gauges);
    }

    /** Comes back with the callouts of those notices that are looked into. */
    private List<String> prepareNotices(Wants wants) {
        var looked = new ArrayList<>(wants.answered);
        looked.addAll(wants.followed);
        wants.desks.stream()
                .map(slice.picture::desk)
                .flatMap(desk -> Stream.concat(desk.waiting().stream(), desk.news().waiting().stream()))
                .forEach(one -> looked.add(one.notice()));
        var all = new ArrayList<>(wants.notices);
        all.addAll(looked);
        slice.needNotices(all);
        var callouts = new ArrayList<String>();
        looked.forEach(id -> slice.picture.notice(id).ifPresent(notice -> callouts.addAll(notice.callouts())));
        return callouts;
    }

    /** Lays a decision over what is known. In a flood it mentions every alarm of the site: those that stay are left out. */
    public void apply(Changes changes) {
        var real = new Changes(
                changes.alarms().stream()
                        .filter(alarm -> !alarm.equals(alarm(alarm.key())))
                        .toList(),
                changes.callouts(),
                changes.notices(),
                changes.desks(),
                changes.boxes(),
                changes.floods(),
                changes.lines(),
                changes.absences(),
                changes.gauges(),
                changes.standings(),
                changes.offers());
        changed.add(real);
        slice.apply(real);
    }

    /** From here on another setup holds. */
    public void setup(Setup next) {
        slice.picture.setup(next);
    }

    Changed changed() {
        return changed;
    }

    Kept kept() {
        return slice.kept;
    }

    Slice slice() {
        return slice;
    }

    /** Every alarm that was read or decided so far. */
    Collection<Alarm> alarms() {
        return slice.picture.alarms();
    }

    @Override
    public Setup setup() {
        return slice.picture.setup();
    }

    @Override
    public Alarm alarm(AlarmKey key) {
        slice.needAlarm(key);
        return slice.picture.alarm(key);
    }

    @Override
    public List<Alarm> alarmsAt(String site) {
        slice.needAlarmsAt(site);
        return slice.picture.alarmsAt(site);
    }

    @Override
    public Optional<Callout> callout(String id) {
        slice.needCallouts(List.of(id));
        return slice.picture.callout(id);
    }

    @Override
    public List<Callout> calloutsAt(String site) {
        slice.needCalloutsAt(site);
        return slice.picture.calloutsAt(site);
    }

    @Override
    public Flood flood(String site) {
        slice.needFlood(site);
        return slice.picture.flood(site);
    }

    @Override
    public Desk desk(String contact) {
        slice.needDesks();
        return slice.picture.desk(contact);
    }

    @Override
    public Optional<Notice> notice(String id) {
        slice.needNotices(List.of(id));
        return slice.picture.notice(id);
    }

    @Override
    public List<Notice> unsent(String callout) {
        slice.needUnsent(List.of(callout));
        return slice.picture.unsent(callout);
    }

    @Override
    public List<Notice> queued(String channel) {
        slice.needQueued(channel);
        return slice.picture.queued(channel);
    }

    @Override
    public Optional<BoxWatch> box(String id) {
        slice.needBox(id);
        return slice.picture.box(id);
    }

    @Override
    public Optional<Absence> absence(Path path) {
        slice.needAbsences(List.of(path));
        return slice.picture.absence(path);
    }

    @Override
    public LineHealth health(LineHealth.Key line) {
        slice.needLines();
        return slice.picture.health(line);
    }

    @Override
    public Gauge gauge(Gauge.Key key) {
        slice.needGauges(List.of(key));
        return slice.picture.gauge(key);
    }

    @Override
    public Standing standing(String site) {
        slice.needStandings(List.of(site));
        return slice.picture.standing(site);
    }

    @Override
    public Optional<Offer> offer(String id) {
        slice.needOffers(List.of(id));
        return slice.picture.offer(id);
    }

    @Override
    public List<Offer> offers(String roster) {
        slice.needOffersOf(roster);
        return slice.picture.offers(roster);
    }
}
