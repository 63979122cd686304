package yardlight.escalation;

import java.time.Duration;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.coverage.Coverage;
import yardlight.escalation.coverage.Gap;
import yardlight.escalation.coverage.TooMuch;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.roster.Relief;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/**
 * For how long during a turn nobody hears an alarm at once as it is, worked out once, against how it would be with somebody
 * else. The lane waits for this, so only sites are looked at whose ladder comes to the roster of the turn.
 */
final class SwapSilence {

    /** Low and medium alarms may wait for a morning; with somebody who lets not even these through the night has nobody. */
    private static final Priority MATTERS = Priority.HIGH;

    private final Set<AlarmKey> stops;
    private final SwapPeople.Turn turn;
    private final Set<String> sites;

    /** By site; empty when it cannot be worked out. */
    private final Optional<Map<String, Duration>> was;

    SwapSilence(Setup setup, Set<AlarmKey> stops, SwapPeople.Turn turn) {
        this.stops = stops;
        this.turn = turn;
        this.sites = sites(setup, turn.roster().id());
        this.was = lengths(setup);
    }

    /** Whether an alarm that somebody hears at once as it is would be heard by nobody, or later. */
    boolean longerWith(Setup after) {
        // What cannot be worked out is not taken for harmless.
        return was.flatMap(before -> lengths(after)
                        .map(is -> sites.stream().anyMatch(site -> is.get(site).compareTo(before.get(site)) > 0)))
                .orElse(true);
    }

    private Optional<Map<String, Duration>> lengths(Setup setup) {
        var coverage = new Coverage(setup, stops, turn.from(), turn.to());
        var lengths = new HashMap<String, Duration>();
        try {
            sites.forEach(site -> lengths.put(site, length(coverage.gaps(site))));
        } catch (TooMuch much) {
            return Optional.empty();
        }
        return Optional.of(lengths);
    }

    private static Duration length(List<Gap> gaps) {
        return gaps.stream()
                .filter(gap -> gap.priorities().contains(MATTERS))
                .map(gap -> Duration.between(gap.from(), gap.to()))
                .reduce(Duration.ZERO, Duration::plus);
    }

    /** Those where somebody who is on call in the roster can be called, be it through other rosters. */
    static Set<String> sites(Setup setup, String roster) {
        Set<String> names = leadingTo(setup, Rung.ROSTER + roster);
        var found = new HashSet<String>();
        for (Site site : setup.sites().values()) {
            boolean reaches = Optional.ofNullable(setup.ladders().get(site.ladder()))
                    .filter(ladder -> ladder.rungs().stream()
                            .flatMap(rung -> rung.call().stream())
                            .anyMatch(names::contains))
                    .isPresent();
            if (reaches) {
                found.add(site.id());
            }
        }
        return found;
    }

    private static Set<String> leadingTo(Setup setup, String name) {
        var names = new HashSet<>(Set.of(name));
        boolean more = true;
        while (more) {
            more = false;
            for (Roster one : setup.rosters().values()) {
                boolean leads = Stream.concat(
                                one.order().stream(), one.reliefs().stream().map(Relief::contact))
                        .anyMatch(names::contains);
                more |= leads && names.add(Rung.ROSTER + one.id());
            }
        }
        return names;
    }
}
