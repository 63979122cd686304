package yardlight.gateway.coverage;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.coverage.Gap;
import yardlight.escalation.coverage.Gaps;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.wording.Wellbeing;

/**
 * The gaps of the next 400 days, as they were worked out last: of each site the one to name and how many there are besides.
 *
 * @param setup the one that it is about
 * @param stops the lines by which somebody wanted nothing more
 * @param from when it was worked out
 * @param sites by id; a site without a gap is not among them
 * @param whole whether every site was looked at: so much can be set up that it would take too long
 */
public record Outlook(Setup setup, Set<AlarmKey> stops, Instant from, Map<String, Gaps.Ahead> sites, boolean whole) {

    /** How far it looks ahead. */
    public static final Duration AHEAD = Duration.ofDays(400);

    /** After this time there is another day to look at. */
    static final Duration FRESH = Duration.ofHours(24);

    public Outlook {
        sites = Map.copyOf(sites);
    }

    Outlook(Setup setup, Set<AlarmKey> stops, Instant from, Map<String, Gaps.Ahead> sites) {
        this(setup, stops, from, sites, true);
    }

    /** What an all's-well says of it: the worst gap of all sites, and how many there are besides. */
    public Optional<Wellbeing.Uncovered> worst() {
        int all = sites.values().stream().mapToInt(one -> 1 + one.more()).sum();
        return sites.entrySet().stream()
                .min(Comparator.comparing(one -> one.getValue().named(), Gaps.WORST_FIRST))
                .flatMap(one -> setup.site(one.getKey())
                        .map(site -> uncovered(site, one.getValue().named(), all - 1)));
    }

    private static Wellbeing.Uncovered uncovered(Site site, Gap gap, int more) {
        return new Wellbeing.Uncovered(site, gap.priorities(), gap.from(), gap.to(), more);
    }

    /** Whether it still says what would be found now. */
    boolean holds(Setup now, Set<AlarmKey> stopped, Instant at) {
        return setup == now
                && stops.equals(stopped)
                && !at.isBefore(from)
                && at.isBefore(from.plus(FRESH))
                && sites.values().stream().allMatch(one -> one.named().to().isAfter(at));
    }
}
