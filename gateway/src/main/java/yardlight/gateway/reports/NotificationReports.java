package yardlight.gateway.reports;

import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.AlarmFilter;
import yardlight.db.alarm.Alarms;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.db.alarm.RecordedCallout;
import yardlight.db.evidence.LogTree;
import yardlight.db.log.AnswerLines;
import yardlight.db.log.LogLine;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.account.Accounts;
import yardlight.gateway.account.Moment;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Telling;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.seal.SigningKey;
import yardlight.gateway.setup.SetupInForce;

/** Makes notification reports: with a number of queries that does not grow with the alarms in it. */
@Component
class NotificationReports {

    private final Alarms alarms;
    private final AnswerLines lines;
    private final Accounts accounts;
    private final LogTree tree;
    private final SigningKey key;
    private final SetupInForce inForce;
    private final InstantSource clock;

    NotificationReports(
            Alarms alarms,
            AnswerLines lines,
            Accounts accounts,
            LogTree tree,
            SigningKey key,
            SetupInForce inForce,
            InstantSource clock) {
        this.alarms = alarms;
        this.lines = lines;
        this.accounts = accounts;
        this.tree = tree;
        this.key = key;
        this.inForce = inForce;
        this.clock = clock;
    }

    /**
     * @param by login of who makes it
     * @throws Problem 404 when there is no such alarm
     */
    NotificationReport of(Asked asked, Tongue tongue, String by) {
        Instant now = clock.instant();
        List<RecordedAlarm> found = found(asked);
        List<Occurred> occurred = occurred(found, asked.alarm().isPresent(), tongue, now);
        boolean period = asked.alarm().isEmpty();
        return new NotificationReport(
                now,
                by,
                asked.site(),
                Optional.of(asked.from()).filter(at -> period),
                Optional.of(asked.to()).filter(at -> period),
                found.size() == AlarmFilter.MOST,
                occurred,
                // Last, so that it vouches for every line that was read.
                key.sign(tree.head()));
    }

    /** Oldest first. */
    private List<RecordedAlarm> found(Asked asked) {
        if (asked.alarm().isPresent()) {
            return List.of(alarms.byId(asked.alarm().get())
                    .filter(one -> one.alarm().occurrence() > 0)
                    .orElseThrow(() -> Problem.notFound("there is no such alarm")));
        }
        var newest = new ArrayList<>(alarms.find(new AlarmFilter(
                asked.site(), Optional.empty(), Optional.of(asked.from()), Optional.of(asked.to()), AlarmFilter.MOST)));
        Collections.reverse(newest);
        return newest;
    }

    private List<Occurred> occurred(List<RecordedAlarm> found, boolean whole, Tongue tongue, Instant now) {
        Setup setup = inForce.setup();
        var names = new Names(setup);
        Map<String, List<LogLine>> said =
                lines.toAlarms(found.stream().map(one -> one.alarm().id()).toList(), now);
        Map<String, List<RecordedCallout>> callouts = callouts(found, said);
        var told = new ToldRows(setup, told(callouts));
        return found.stream()
                .map(one -> {
                    String id = one.alarm().id();
                    var clockface = new Clockface(names.zone(one.alarm().key().site()), now, tongue.locale());
                    var telling = new Telling(tongue, names, clockface);
                    List<Moment> story = whole ? accounts.of(one, telling) : List.of();
                    List<Answered> answers = Answered.of(said.getOrDefault(id, List.of()), names);
                    return Occurred.of(one.alarm(), telling, answers, told.of(callouts.get(id), one.alarm()), story);
                })
                .toList();
    }

    /** The newest callout of each, and the earlier ones of which the log tells. */
    private Map<String, List<RecordedCallout>> callouts(List<RecordedAlarm> found, Map<String, List<LogLine>> said) {
        var earlier = new HashMap<String, Set<String>>();
        for (RecordedAlarm one : found) {
            Set<String> ids = said.getOrDefault(one.alarm().id(), List.of()).stream()
                    .flatMap(line -> Optional.ofNullable(line.about().get("callout")).stream())
                    .collect(Collectors.toCollection(LinkedHashSet::new));
            one.alarm().callout().ifPresent(ids::remove);
            earlier.put(one.alarm().id(), ids);
        }
        Map<String, RecordedCallout> others =
                alarms.callouts(earlier.values().stream().flatMap(Set::stream).collect(Collectors.toSet())).stream()
                        .collect(Collectors.toMap(one -> one.callout().id(), one -> one));
        var callouts = new HashMap<String, List<RecordedCallout>>();
        found.forEach(one -> callouts.put(
                one.alarm().id(),
                Stream.concat(
                                earlier.get(one.alarm().id()).stream()
                                        .flatMap(id -> Optional.ofNullable(others.get(id)).stream()),
                                one.callout().stream())
                        .toList()));
        return callouts;
    }

    /** The lines of the log that tell of each notice. */
    private Map<String, List<Long>> told(Map<String, List<RecordedCallout>> callouts) {
        List<Notice> notices = callouts.values().stream()
                .flatMap(List::stream)
                .flatMap(callout -> callout.notices().stream())
                .map(recorded -> recorded.notice())
                .toList();
        Set<String> wanted = notices.stream().map(Notice::id).collect(Collectors.toSet());
        Set<String> people = notices.stream().map(Notice::contact).collect(Collectors.toCollection(TreeSet::new));
        Optional<Instant> first = notices.stream().map(Notice::queuedAt).min(Instant::compareTo);
        Optional<Instant> last = notices.stream().map(Notice::queuedAt).max(Instant::compareTo);
        if (first.isEmpty()) {
            return Map.of();
        }
        // What becomes of a notice becomes of it within days.
        return lines.ofNotices(wanted, people, first.get(), last.get().plus(java.time.Duration.ofDays(4)));
    }
}
