package yardlight.escalation.coverage;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/**
 * Whom an alarm would reach at any instant from one time to another: the ladder climbed on paper, nobody answering. It goes
 * from one change to the next (quiet hours, handovers, reliefs, clocks that are changed) and not minute by minute, and is
 * exact nevertheless. Sites with the same ladder share the work. Not for use by several threads.
 */
public final class Coverage {

    private record Asked(Ladder ladder, Priority priority) {}

    private final Setup setup;
    private final Instant from;
    private final Instant to;
    private final Timeline timeline;
    private final Map<Asked, List<Stretch>> known = new HashMap<>();

    /**
     * For a time to come.
     *
     * @param stops the lines by which somebody wants nothing more, as {@code Stop} has them
     * @param from inclusive
     * @param to exclusive
     */
    public Coverage(Setup setup, Set<AlarmKey> stops, Instant from, Instant to) {
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("coverage must end after it begins: " + from + " to " + to);
        }
        this.setup = setup;
        this.from = from;
        this.to = to;
        // A climb that begins at the last moment looks this far ahead; one that is over it by the longest wait stops.
        this.timeline = new Timeline(setup, stops, from, to.plus(Walk.LONGEST).plus(Duration.ofDays(2)));
    }

    /**
     * In order and without a gap, from the first instant to the last. For a site that is out of service nobody is called, so
     * there is nothing to cover: empty.
     *
     * @throws IllegalArgumentException if the site is not in the setup
     */
    public List<Stretch> of(String site, Priority priority) {
        Site known = setup.site(site).orElseThrow(() -> new IllegalArgumentException("site must be set up: " + site));
        if (!known.inService()) {
            return List.of();
        }
        return this.known.computeIfAbsent(new Asked(ladder(known), priority), this::climbAll);
    }

    /** The times in which nobody hears at once. */
    public List<Stretch> gaps(String site, Priority priority) {
        return of(site, priority).stream()
                .filter(stretch -> !stretch.heardAtOnce())
                .toList();
    }

    private Ladder ladder(Site site) {
        return Optional.ofNullable(setup.ladders().get(site.ladder())).orElse(Ladder.EVERYBODY_ONCE);
    }

    private List<Stretch> climbAll(Asked asked) {
        var stretches = new ArrayList<Stretch>();
        Instant alarm = from;
        while (alarm.isBefore(to)) {
            Stretch next = new Walk(timeline, asked.ladder(), asked.priority(), alarm, to).stretch();
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
