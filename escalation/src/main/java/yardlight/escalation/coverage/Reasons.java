package yardlight.escalation.coverage;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Setup;

/** Looks at one instant of a gap and says why it is one. */
final class Reasons {

    private final Setup setup;
    private final Timeline timeline;

    Reasons(Setup setup, Timeline timeline) {
        this.setup = setup;
        this.timeline = timeline;
    }

    /** What was found, and how long it holds as far as it hangs on those for whom somebody stands in. */
    record Reason(Why why, Instant until) {}

    /** @param at an instant at which nobody is called at once */
    Reason reason(Ladder ladder, Priority priority, Instant at) {
        List<String> calls =
                ladder.rungs().stream().flatMap(rung -> rung.call().stream()).toList();
        Instant until = Instant.MAX;
        boolean relief = false;
        for (String tour :
                calls.stream().flatMap(call -> relieved(call, at).stream()).toList()) {
            Timeline.Found<Optional<Instant>> sleep = timeline.sleep(tour, priority, at);
            relief |= timeline.hasLine(tour) && sleep.what().isEmpty();
            until = sleep.until().isBefore(until) ? sleep.until() : until;
        }
        return new Reason(relief ? Why.RELIEF : why(calls, at), until);
    }

    private Why why(List<String> calls, Instant at) {
        List<String> behind = calls.stream()
                .flatMap(call -> setup.peopleBehind(call, at).stream())
                .toList();
        if (behind.stream().anyMatch(timeline::hasLine)) {
            return Why.QUIET_HOURS;
        }
        if (!behind.isEmpty()) {
            return Why.NO_LINE;
        }
        return calls.stream().anyMatch(call -> call.startsWith(Rung.ROSTER)) ? Why.ROSTER_EMPTY : Why.NOBODY;
    }

    /** Whoever would be on call if nobody stood in for them, here or in a roster that stands in this one. */
    private List<String> relieved(String call, Instant at) {
        var tours = new ArrayList<String>();
        var seen = new HashSet<String>();
        Optional<Roster> roster = roster(call);
        while (roster.isPresent() && seen.add(roster.get().id())) {
            Roster one = roster.get();
            Optional<String> tour = one.tourAt(at).flatMap(yardlight.escalation.roster.Stretch::tour);
            tour.filter(whom -> !one.onCall(at).equals(Optional.of(whom)))
                    .ifPresent(whom -> tours.addAll(setup.peopleBehind(whom, at)));
            roster = one.onCall(at).flatMap(this::roster);
        }
        return tours;
    }

    private Optional<Roster> roster(String call) {
        return call.startsWith(Rung.ROSTER)
                ? Optional.ofNullable(setup.rosters().get(call.substring(Rung.ROSTER.length())))
                : Optional.empty();
    }
}
