package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Inquiry;
import yardlight.escalation.heartbeat.Judgement;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.heartbeat.Verdict;
import yardlight.escalation.heartbeat.Witness;
import yardlight.escalation.setup.Box;

/**
 * Silences as alarms: what each is taken for, which boxes belong to it, and what it is taken for once they are back. Boxes
 * that fall silent together and share a feed or a link are one alarm, at the site of the first that was missed.
 */
final class Absences {

    /** A box that falls silent later than this after the others is another matter, unless it shows the same signs. */
    private static final Duration WINDOW = Duration.ofMinutes(30);

    private final Draft draft;
    private final Reports reports;
    private final Verdicts verdicts;

    Absences(Draft draft, Reports reports, Verdicts verdicts) {
        this.draft = draft;
        this.reports = reports;
        this.verdicts = verdicts;
    }

    /**
     * A box is silent from now on.
     *
     * @param open since when all could have been heard
     */
    void begin(Box box, BoxWatch watch, Instant open) {
        var inquiry = new Inquiry(new Witness(box, watch, open), witnesses(box, open), draft.now());
        Judgement judgement = inquiry.judgement();
        // Two silences kept by one path would be one alarm, of which the second ends the first.
        Optional<Absence> known = candidates(box, inquiry, judgement.verdict())
                .filter(absence -> fits(absence, box, watch, judgement))
                .findFirst()
                .or(() -> draft.absence(path(box, inquiry, judgement.verdict()))
                        .filter(absence -> absence.open() && told(absence)));
        if (known.isPresent()) {
            join(known.get(), box, watch, inquiry, judgement);
        } else {
            open(box, watch, inquiry, judgement);
        }
    }

    private List<Witness> witnesses(Box box, Instant open) {
        return Neighbours.of(draft.setup(), box).stream()
                .flatMap(other -> draft.box(other.id()).map(watch -> new Witness(other, watch, open)).stream())
                .toList();
    }

    /**
     * The silences that this one may belong to, those at its own site first: they are one alarm in any case. One that is the
     * power's belongs to no others by their link, and one that is the link's to none by their feed.
     */
    private Stream<Absence> candidates(Box box, Inquiry inquiry, Verdict verdict) {
        String ladder = ladder(box.site());
        Stream<Path> paths = Stream.of(
                        draft.setup().boxesAt(box.site()).stream().flatMap(this::path),
                        box.link().map(link -> Path.link(link, ladder)).stream(),
                        box.feed().map(feed -> Path.feed(feed, ladder)).stream(),
                        Stream.of(Path.Kind.LINK, Path.Kind.FEED)
                                .filter(kind -> shared(kind, verdict))
                                .flatMap(kind -> inquiry.quiet(kind).stream())
                                .flatMap(other -> path(other.box())))
                .flatMap(one -> one);
        return paths.distinct().flatMap(path -> draft.absence(path).stream()).filter(Absence::open);
    }

    /** Whether a silence that is taken for this can be that of others who share a link, or a feed. */
    private static boolean shared(Path.Kind kind, Verdict verdict) {
        return verdict != (kind == Path.Kind.LINK ? Verdict.POWER_OFF : Verdict.COMMS_LOSS);
    }

    private Stream<Path> path(Box box) {
        return draft.box(box.id()).filter(BoxWatch::silent).flatMap(BoxWatch::absence).stream();
    }

    private boolean fits(Absence absence, Box box, BoxWatch watch, Judgement judgement) {
        if (absence.key().equals(BoxAlarms.silence(box.site()))) {
            return true;
        }
        Verdict mine = judgement.verdict();
        Verdict theirs = absence.verdict();
        boolean agrees = mine == theirs || mine == Verdict.SILENT || theirs == Verdict.SILENT;
        return agrees
                && told(absence)
                && together(absence, watch)
                && serves(box)
                && ladder(absence.key().site()).equals(ladder(box.site()));
    }

    /** Whether people hear of it: what is put aside at one site is not so at another. */
    private boolean told(Absence absence) {
        return !draft.alarm(absence.key()).state().withheld();
    }

    private static boolean together(Absence absence, BoxWatch watch) {
        return !watch.heardAt().isAfter(absence.newest().plus(WINDOW));
    }

    /** Whoever works on a box takes its point {@code box} out of service: then it says nothing of others. */
    private boolean serves(Box box) {
        return serves(BoxAlarms.silence(box.site()));
    }

    private boolean serves(AlarmKey key) {
        return draft.setup().point(key.site(), key.point()).inService();
    }

    private String ladder(String site) {
        return Ladders.of(draft, site).id();
    }

    private void open(Box box, BoxWatch watch, Inquiry inquiry, Judgement judgement) {
        Path all = path(box, inquiry, judgement.verdict());
        Path path = place(all, box.site());
        AlarmKey key = BoxAlarms.silence(path, box.site());
        Path shared = heeded(key) ? all : path;
        draft.put(watch.gone(path));
        verdicts.begin(key, box, judgement);
        var first = new TreeMap<>(Map.of(box.id(), new Absence.Member(watch.heardAt(), Optional.empty())));
        var alone = new Absence(
                idOf(draft.alarm(key)),
                key,
                path,
                shared,
                watch.heardAt(),
                draft.now(),
                first,
                judgement.verdict(),
                judgement,
                Optional.empty());
        log(box, "box " + box.id() + " has been silent since " + watch.heardAt() + ": " + Verdicts.words(judgement));
        draft.put(shared.kind() == Path.Kind.SITE ? alone : together(alone, box, inquiry));
        reports.resume(key, false);
    }

    /**
     * Where a silence is kept. One of several sites is so as that of its own site when the alarm of their path is kept from
     * people: then it would be too.
     */
    private Path place(Path shared, String site) {
        boolean taken = draft.absence(shared).filter(Absence::open).isPresent();
        return taken || !heeded(BoxAlarms.silence(shared, site)) ? Path.site(site) : shared;
    }

    /** Whether people would hear of this alarm. */
    private boolean heeded(AlarmKey key) {
        return serves(key) && !draft.alarm(key).state().withheld();
    }

    /** While its on-delay runs the alarm has yet to occur. */
    private static String idOf(Alarm alarm) {
        return alarm.active()
                ? alarm.id()
                : alarm.draft().occurrence(alarm.occurrence() + 1).done().id();
    }

    /** Whoever went quiet with it belongs to it from the first, although the deadline is yet to come: the text names them. */
    private Absence together(Absence alone, Box box, Inquiry inquiry) {
        Absence all = alone;
        for (Witness other : inquiry.quiet(alone.shared().kind())) {
            boolean same = ladder(other.box().site()).equals(ladder(box.site())) && serves(other.box());
            if (same && !other.watch().silent()) {
                draft.put(other.watch().gone(alone.path()));
                all = all.joined(other.box().id(), other.watch().heardAt());
                log(other.box(), "box " + other.box().id() + " went quiet with it");
            }
        }
        return all;
    }

    /** What a silence is the silence of: of more than one site only if others of the same ladder went quiet as well. */
    private Path path(Box box, Inquiry inquiry, Verdict verdict) {
        String ladder = ladder(box.site());
        if (serves(box) && shared(Path.Kind.LINK, verdict) && elsewhere(box, inquiry.quiet(Path.Kind.LINK))) {
            return Path.link(box.link().orElseThrow(), ladder);
        }
        if (serves(box) && shared(Path.Kind.FEED, verdict) && elsewhere(box, inquiry.quiet(Path.Kind.FEED))) {
            return Path.feed(box.feed().orElseThrow(), ladder);
        }
        return Path.site(box.site());
    }

    private boolean elsewhere(Box box, List<Witness> quiet) {
        return quiet.stream()
                .map(Witness::box)
                .filter(this::serves)
                .map(Box::site)
                .anyMatch(site -> !site.equals(box.site()) && ladder(site).equals(ladder(box.site())));
    }

    private void join(Absence absence, Box box, BoxWatch watch, Inquiry inquiry, Judgement judgement) {
        boolean alone = absence.shared().equals(Path.site(absence.key().site()));
        boolean mine = absence.key().site().equals(box.site());
        Path shared = alone && !mine ? path(box, inquiry, judgement.verdict()) : absence.shared();
        draft.put(watch.gone(absence.path()));
        boolean later = !together(absence, watch);
        Absence after =
                absence.takes(box.id()) ? absence.over(shared).joined(box.id(), watch.heardAt()) : absence.over(shared);
        draft.put(after);
        log(
                box,
                "box " + box.id() + " has been silent since " + watch.heardAt() + ", one of "
                        + after.members().size() + " boxes of " + absence.alarm());
        verdicts.change(after, better(absence.judgement(), judgement), "box " + box.id() + " is silent too");
        if (later) {
            // Whoever answered the first has not answered this.
            reports.again(after.key());
        }
        reports.resume(after.key(), false);
    }

    private static Judgement better(Judgement before, Judgement now) {
        boolean decides = before.verdict() == Verdict.SILENT && now.verdict() != Verdict.SILENT;
        boolean agrees = before.verdict() == now.verdict();
        return decides || agrees && now.confidence() > before.confidence() ? now : before;
    }

    private void log(Box box, String words) {
        draft.log(Entry.What.BOX, Map.of("site", box.site(), "box", box.id()), words);
    }
}
