package yardlight.escalation;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Flood;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.setup.Stop;
import yardlight.escalation.shutin.Standing;
import yardlight.escalation.swap.Offer;

/** A decision in the making: the old situation with what has been changed so far laid over it. */
final class Draft extends PutDown implements Situation {

    private final Situation before;
    private final Instant now;
    private final List<Entry> entries = new ArrayList<>();
    private Setup setup;
    private Optional<Set<AlarmKey>> stops = Optional.empty();

    Draft(Situation before, Instant now) {
        this.before = before;
        this.now = now;
        this.setup = before.setup();
    }

    Instant now() {
        return now;
    }

    /** Everything as it was when the decision began. */
    Situation before() {
        return before;
    }

    void setup(Setup next) {
        setup = next;
    }

    @Override
    void put(Alarm alarm) {
        super.put(alarm);
        if (alarm.key().site().equals(Site.GATEWAY)) {
            stops = Optional.empty();
        }
    }

    /** The lines by which somebody wants nothing more. There are few: they are looked up among what is live at the gateway. */
    Set<AlarmKey> stops() {
        if (stops.isEmpty()) {
            stops = Optional.of(Stop.among(alarmsAt(Site.GATEWAY)));
        }
        return stops.get();
    }

    void log(Entry.What what, Map<String, String> about, String words) {
        entries.add(new Entry(what, about, words));
    }

    void log(Callout.Facts facts, String words) {
        String alarm = alarm(facts.alarms().get(0)).id();
        log(
                Entry.What.CALLOUT,
                Map.of("site", facts.site(), "callout", facts.id(), "alarm", alarm),
                "callout " + facts.code() + " " + words);
    }

    void log(Notice notice, String words) {
        log(Entry.What.NOTICE, notice.about(), words);
    }

    /** Whether nothing that the callout is about waits for an answer, or for the return that its ladder waits for. */
    boolean over(Callout callout) {
        return callout.facts().alarms().stream().map(this::alarm).noneMatch(alarm -> waits(alarm, callout));
    }

    private boolean waits(Alarm alarm, Callout callout) {
        boolean mine = alarm.callout().filter(callout.id()::equals).isPresent();
        boolean untilNormal = Ladders.of(this, callout.facts()).endsWhen() == Ladder.EndsWhen.NORMAL;
        return mine && (untilNormal ? alarm.state().calls() : alarm.state().awaitsAnswer());
    }

    /** Whether any alarm of the callout holds, and people have to be called for it. */
    boolean holds(Callout.Facts callout) {
        return callout.alarms().stream()
                .map(this::alarm)
                .filter(alarm -> alarm.callout().filter(callout.id()::equals).isPresent())
                .anyMatch(alarm -> alarm.active() && alarm.state().calls());
    }

    /** The callout once a text says how it stands now. */
    Callout.Facts announced(Callout.Facts callout) {
        return callout.announcing(holds(callout));
    }

    /** The live callouts of a site that this decision has to do with so far, oldest first. */
    List<Callout> touchedAt(String site) {
        return Stream.concat(
                        callouts.keySet().stream(),
                        alarms.keySet().stream()
                                .flatMap(key -> Stream.of(before.alarm(key), alarms.get(key)))
                                .flatMap(alarm -> alarm.callout().stream()))
                .distinct()
                .flatMap(id -> callout(id).stream())
                .filter(callout -> callout.live() && callout.facts().site().equals(site))
                .sorted(Callout.OLDEST_FIRST)
                .toList();
    }

    /** Whether a text about the callout still has something to say. */
    boolean wanted(Callout callout) {
        return callout.live() || callout.kind() == Callout.Kind.EXHAUSTED && !over(callout);
    }

    /** The same of one that may be gone. */
    boolean wanted(String callout) {
        return callout(callout).filter(this::wanted).isPresent();
    }

    /** Whether the notice still has something to say. A test is over with the line that it tries. */
    boolean wanted(Notice notice) {
        return switch (notice.purpose()) {
            case CALL -> notice.callouts().stream().anyMatch(this::wanted);
            case NEWS -> !new Tidings(this).of(notice).isEmpty();
            case ALLS_WELL -> notice.queuedAt().plus(AllsWells.OF_USE).isAfter(now);
            case SIGN_IN -> notice.queuedAt().plus(SignIns.OF_USE).isAfter(now);
            case TEST -> false;
            case SHUT_IN -> notice.queuedAt().plus(ShutInNews.OF_USE).isAfter(now);
            case TURN -> TurnNews.ofUse(this, notice);
        };
    }

    /** The finished decision. A refusal changes nothing and leaves only its line in the log. */
    Decision decision(Answer answer) {
        if (answer instanceof Answer.Refusal refusal) {
            return Decision.refused(refusal);
        }
        return new Decision(changes(), entries, answer);
    }

    @Override
    public Setup setup() {
        return setup;
    }

    @Override
    public Alarm alarm(AlarmKey key) {
        return Optional.ofNullable(alarms.get(key)).orElseGet(() -> before.alarm(key));
    }

    @Override
    public List<Alarm> alarmsAt(String site) {
        var merged = new TreeMap<AlarmKey, Alarm>();
        before.alarmsAt(site).forEach(alarm -> merged.put(alarm.key(), alarm));
        alarms.values().stream()
                .filter(alarm -> alarm.key().site().equals(site))
                .forEach(alarm -> merged.put(alarm.key(), alarm));
        return merged.values().stream().filter(Alarm::live).toList();
    }

    @Override
    public Optional<Callout> callout(String id) {
        return either(callouts, id, before::callout);
    }

    @Override
    public List<Callout> calloutsAt(String site) {
        return Stream.concat(
                        before.calloutsAt(site).stream().filter(callout -> !callouts.containsKey(callout.id())),
                        callouts.values().stream()
                                .filter(callout -> callout.facts().site().equals(site))
                                .filter(Callout::live))
                .sorted(Callout.OLDEST_FIRST)
                .toList();
    }

    @Override
    public Flood flood(String site) {
        return Optional.ofNullable(floods.get(site)).orElseGet(() -> before.flood(site));
    }

    @Override
    public Desk desk(String contact) {
        return Optional.ofNullable(desks.get(contact)).orElseGet(() -> before.desk(contact));
    }

    @Override
    public Optional<Notice> notice(String id) {
        return either(notices, id, before::notice);
    }

    @Override
    public List<Notice> unsent(String callout) {
        return merged(before.unsent(callout))
                .filter(notice ->
                        notice.purpose() == Purpose.CALL && notice.callouts().contains(callout))
                .filter(notice -> notice.state() == NoticeState.QUEUED || notice.state() == NoticeState.HELD)
                .toList();
    }

    @Override
    public List<Notice> queued(String channel) {
        return merged(before.queued(channel))
                .filter(notice -> Carriers.queued(setup, notice, channel))
                .toList();
    }

    @Override
    public Optional<BoxWatch> box(String id) {
        return either(boxes, id, before::box);
    }

    @Override
    public Optional<Absence> absence(Path path) {
        return Optional.ofNullable(absences.get(path)).or(() -> before.absence(path));
    }

    @Override
    public LineHealth health(LineHealth.Key line) {
        return Optional.ofNullable(lines.get(line)).orElseGet(() -> before.health(line));
    }

    @Override
    public Standing standing(String site) {
        return Optional.ofNullable(standings.get(site)).orElseGet(() -> before.standing(site));
    }

    @Override
    public Optional<Offer> offer(String id) {
        return either(offers, id, before::offer);
    }

    @Override
    public List<Offer> offers(String roster) {
        var merged = new TreeMap<String, Offer>();
        before.offers(roster).forEach(offer -> merged.put(offer.id(), offer));
        offers.values().stream()
                .filter(offer -> offer.roster().equals(roster))
                .forEach(offer -> merged.put(offer.id(), offer));
        return merged.values().stream()
                .filter(offer -> offer.state().takeable())
                .toList();
    }

    private Stream<Notice> merged(List<Notice> old) {
        var merged = new TreeMap<String, Notice>();
        old.forEach(notice -> merged.put(notice.id(), notice));
        merged.putAll(notices);
        return merged.values().stream();
    }

    @Override
    public Gauge gauge(Gauge.Key key) {
        return Optional.ofNullable(gauges.get(key)).orElseGet(() -> before.gauge(key));
    }

    private static <T> Optional<T> either(Map<String, T> changed, String id, Function<String, Optional<T>> old) {
        return changed.containsKey(id) ? Optional.of(changed.get(id)) : old.apply(id);
    }
}
