package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.setup.Box;
import yardlight.escalation.wording.Circumstance;
import yardlight.escalation.wording.Subject;

/**
 * Feeds that serve several sites of one ladder. Every site has its own alarm and its own callout when such a feed is off; but
 * what of them is to be told within a moment waits for each other and is one text. Critical never waits.
 */
final class SharedFeeds {

    /** A post that got lost is tried once more after some ten seconds. Common practice, no source. */
    static final Duration GATHERS = Duration.ofSeconds(20);

    private final Draft draft;

    SharedFeeds(Draft draft) {
        this.draft = draft;
    }

    /**
     * Until when a call waits for those about the same feed at other sites; empty when there is nothing to wait for. The
     * first about a callout always waits, later ones only if another callout is about to go on as well.
     *
     * @param first whether nobody has been told of its callout yet
     */
    Optional<Instant> gathersUntil(Notice notice, boolean first) {
        if (notice.priority() == Priority.CRITICAL) {
            return Optional.empty();
        }
        return feed(notice).flatMap(feed -> {
            Optional<Instant> other = waiting(notice, feed);
            boolean waits = first || soon(notice, feed);
            return other.isPresent() || !waits ? other : Optional.of(draft.now().plus(GATHERS));
        });
    }

    /** The feed that this is about, and nothing else is; empty when it serves nobody else on the ladder. */
    private Optional<String> feed(Notice notice) {
        List<AlarmKey> about = notice.callouts().stream()
                .flatMap(id -> draft.callout(id).stream())
                .flatMap(callout -> callout.facts().alarms().stream())
                .toList();
        List<Optional<String>> feeds =
                about.stream().map(BoxAlarms::feed).distinct().toList();
        return feeds.size() == 1
                ? feeds.get(0)
                        .filter(feed ->
                                elsewhere(about.get(0).site(), feed).findAny().isPresent())
                : Optional.empty();
    }

    /** The other sites of the same ladder that hang on it. */
    private Stream<String> elsewhere(String site, String feed) {
        String ladder = Ladders.of(draft, site).id();
        return draft.setup().boxesOnFeed(feed).stream()
                .map(Box::site)
                .distinct()
                .filter(other ->
                        !other.equals(site) && Ladders.of(draft, other).id().equals(ladder));
    }

    /** What is about one feed at several sites is told as one thing: which feed it is, and where. */
    List<Subject> together(List<Subject> subjects) {
        Set<Optional<String>> feeds =
                subjects.stream().map(one -> BoxAlarms.feed(one.alarm().key())).collect(Collectors.toSet());
        boolean plain = subjects.stream()
                .allMatch(one ->
                        one.alarm().active() && one.circumstance().filling().isEmpty());
        if (subjects.size() < 2 || feeds.size() > 1 || feeds.contains(Optional.<String>empty()) || !plain) {
            return subjects;
        }
        Subject first = subjects.get(0);
        Instant since = subjects.stream()
                .flatMap(one -> one.alarm().occurredAt().stream())
                .min(Instant::compareTo)
                .orElse(draft.now());
        var shared = new Circumstance.Shared(
                false,
                feeds.iterator().next().orElseThrow(),
                subjects.stream().map(Subject::site).toList(),
                since);
        var circumstance = new Circumstance(Optional.empty(), Optional.of(shared), Optional.empty());
        return List.of(new Subject(first.site(), first.point(), first.alarm(), circumstance));
    }

    /** When that goes out which lies on the contact's desk about the feed already. */
    private Optional<Instant> waiting(Notice notice, String feed) {
        Instant latest = draft.now().plus(GATHERS);
        return draft.desk(notice.contact()).waiting().stream()
                .filter(one -> one.until().isAfter(draft.now()) && !one.until().isAfter(latest))
                .filter(one -> draft.notice(one.notice())
                        .filter(other -> other.state() == NoticeState.HELD)
                        .flatMap(this::feed)
                        .filter(feed::equals)
                        .isPresent())
                .map(one -> one.until())
                .min(Instant::compareTo);
    }

    /** Whether the ladder of another site goes on within the moment. */
    private boolean soon(Notice notice, String feed) {
        Instant latest = draft.now().plus(GATHERS);
        return notice.callouts().stream()
                .flatMap(id -> draft.callout(id).stream())
                .flatMap(callout -> elsewhere(callout.facts().site(), feed))
                .map(site -> draft.alarm(BoxAlarms.feedOff(site, feed)))
                .flatMap(alarm -> alarm.callout().flatMap(draft::callout).flatMap(Callout::dueAt).stream())
                .anyMatch(due -> !due.isAfter(latest));
    }
}
