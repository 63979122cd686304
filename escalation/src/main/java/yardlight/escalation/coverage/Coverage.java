package yardlight.escalation.coverage;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/**
 * Whom an alarm would reach at any instant from one time to another: the ladder climbed on paper, nobody answering. It goes
 * from one change to the next (quiet hours, handovers, reliefs, clocks that are changed) and not minute by minute, and is
 * exact nevertheless. Sites with the same ladder share the work, and so do priorities that nobody's quiet hours tell apart.
 * Not for use by several threads. Whatever is asked can be {@link TooMuch}.
 */
public final class Coverage {

    /** Some seconds of work; two hundred sites with twenty ladders and a dozen people need a few hundredths of it. */
    private static final long MOST_LOOKS = 60_000_000;

    /** Two ladders of the same rungs are climbed in the same way, whatever they are called. */
    private record Asked(List<Rung> rungs, int again, Priority priority) {}

    private final Setup setup;
    private final Set<String> proven;
    private final Instant from;
    private final Instant to;
    private final Timeline timeline;
    private final Map<Asked, List<Stretch>> known = new HashMap<>();
    private final Map<Asked, List<Gaps.Span>> silent = new HashMap<>();

    /** For a time to come, with nothing known of the lines. */
    public Coverage(Setup setup, Set<AlarmKey> stops, Instant from, Instant to) {
        this(setup, stops, Set.of(), from, to);
    }

    /**
     * For a time to come.
     *
     * @param stops the lines by which somebody wants nothing more, as {@code Stop} has them
     * @param proven the contacts who have a line that proved to work; of several who hear at the same time they are named
     * @param from inclusive
     * @param to exclusive
     */
    public Coverage(Setup setup, Set<AlarmKey> stops, Set<String> proven, Instant from, Instant to) {
        this(setup, stops, proven, from, to, MOST_LOOKS);
    }

    Coverage(Setup setup, Set<AlarmKey> stops, Set<String> proven, Instant from, Instant to, long mostLooks) {
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("coverage must end after it begins: " + from + " to " + to);
        }
        this.setup = setup;
        this.proven = Set.copyOf(proven);
        this.from = from;
        this.to = to;
        // A climb that begins at the last moment looks this far ahead; one that is over it by the longest wait stops.
        this.timeline = new Timeline(setup, stops, from, to.plus(Walk.LONGEST).plus(Duration.ofDays(2)), mostLooks);
    }

    /**
     * In order and without a gap, from the first instant to the last. For a site that is out of service nobody is called, so
     * there is nothing to cover: empty.
     *
     * @throws IllegalArgumentException if the site is not in the setup
     */
    public List<Stretch> of(String site, Priority priority) {
        Site known = site(site);
        return known.inService()
                ? this.known.computeIfAbsent(asked(known, priority), asked -> climbAll(asked, ladder(known)))
                : List.of();
    }

    /**
     * The times in which nobody is called at once, in order; none for a site that is out of service.
     *
     * @throws IllegalArgumentException if the site is not in the setup
     */
    public List<Gap> gaps(String site) {
        Site known = site(site);
        var spans = new EnumMap<Priority, List<Gaps.Span>>(Priority.class);
        for (Priority priority : Priority.values()) {
            spans.put(
                    priority,
                    known.inService()
                            ? silent.computeIfAbsent(asked(known, priority), asked -> silence(asked, ladder(known)))
                            : List.of());
        }
        return Gaps.together(spans);
    }

    /**
     * The times in which somebody is called at once, but nobody of whom it is known that they are reached.
     *
     * @throws IllegalArgumentException if the site is not in the setup
     */
    public List<Gap> unproven(String site) {
        var spans = new EnumMap<Priority, List<Gaps.Span>>(Priority.class);
        for (Priority priority : Priority.values()) {
            var found = new ArrayList<Gaps.Span>();
            of(site, priority).stream()
                    .filter(stretch -> stretch.heardAtOnce() && !proven(stretch))
                    .forEach(stretch -> add(found, stretch.from(), stretch.to()));
            spans.put(priority, found);
        }
        return Gaps.together(spans);
    }

    /** Whether whoever hears first has a line that proved to work. */
    public boolean proven(Stretch stretch) {
        return stretch.first().filter(one -> proven.contains(one.contact())).isPresent();
    }

    /** Why this is a gap of the site, in the order in which it is; more than one where the reason changes within it. */
    public Set<Why> why(String site, Gap gap) {
        Site known = site(site);
        Priority priority = gap.priorities().iterator().next();
        var reasons = new Reasons(setup, timeline);
        var whys = new LinkedHashSet<Why>();
        Instant at = gap.from();
        while (at.isBefore(gap.to())) {
            Reasons.Reason reason = reasons.reason(ladder(known), priority, at);
            whys.add(reason.why());
            var walk = new Walk(timeline, ladder(known), priority, at, gap.to());
            walk.called();
            at = reason.until().isBefore(walk.until()) ? reason.until() : walk.until();
        }
        return whys;
    }

    private Site site(String site) {
        return setup.site(site).orElseThrow(() -> new IllegalArgumentException("site must be set up: " + site));
    }

    private Asked asked(Site site, Priority priority) {
        Ladder ladder = ladder(site);
        return new Asked(ladder.rungs(), ladder.again(), timeline.lowestLike(priority));
    }

    private Ladder ladder(Site site) {
        return Optional.ofNullable(setup.ladders().get(site.ladder())).orElse(Ladder.EVERYBODY_ONCE);
    }

    private List<Gaps.Span> silence(Asked asked, Ladder ladder) {
        var spans = new ArrayList<Gaps.Span>();
        Instant alarm = from;
        while (alarm.isBefore(to)) {
            var walk = new Walk(timeline, ladder, asked.priority(), alarm, to);
            if (!walk.called()) {
                add(spans, alarm, walk.until());
            }
            alarm = walk.until();
        }
        return List.copyOf(spans);
    }

    private static void add(List<Gaps.Span> spans, Instant from, Instant to) {
        Gaps.Span last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
        if (last != null && last.to().equals(from)) {
            spans.set(spans.size() - 1, new Gaps.Span(last.from(), to));
        } else {
            spans.add(new Gaps.Span(from, to));
        }
    }

    private List<Stretch> climbAll(Asked asked, Ladder ladder) {
        var stretches = new ArrayList<Stretch>();
        Instant alarm = from;
        while (alarm.isBefore(to)) {
            Stretch next = new Walk(timeline, ladder, asked.priority(), alarm, to).stretch(proven);
            add(stretches, next);
            alarm = next.to();
        }
        return List.copyOf(stretches);
    }

    private static void add(List<Stretch> stretches, Stretch next) {
        Stretch last = stretches.isEmpty() ? null : stretches.get(stretches.size() - 1);
        boolean same = last != null
                && last.first().equals(next.first())
                && last.second().equals(next.second());
        if (same) {
            stretches.set(stretches.size() - 1, new Stretch(last.from(), next.to(), next.first(), next.second()));
        } else {
            stretches.add(next);
        }
    }
}
