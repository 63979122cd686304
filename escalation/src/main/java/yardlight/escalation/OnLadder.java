package yardlight.escalation;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.roster.Relief;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/** The people on a site's ladder. */
public final class OnLadder {

    private OnLadder() {}

    /** Those whom one of its rungs would call at this moment. */
    static Set<String> now(Draft draft, String site) {
        return Ladders.of(draft, site).rungs().stream()
                .flatMap(rung -> rung.call().stream())
                .flatMap(call -> draft.setup().peopleBehind(call, draft.now()).stream())
                .collect(TreeSet::new, Set::add, Set::addAll);
    }

    /** Those whom it may call at some time: who is on a roster of it belongs to it also when they are not on call. */
    public static Set<String> ever(Setup setup, String site) {
        Ladder ladder =
                setup.site(site).map(Site::ladder).map(setup.ladders()::get).orElse(Ladder.EVERYBODY_ONCE);
        var people = new TreeSet<String>();
        var seen = new HashSet<String>();
        ladder.rungs().forEach(rung -> behind(rung.call(), setup, seen, people));
        people.retainAll(setup.contacts().keySet());
        return people;
    }

    private static void behind(Collection<String> calls, Setup setup, Set<String> seen, Set<String> people) {
        for (String call : calls) {
            if (call.equals(Rung.EVERYONE)) {
                people.addAll(setup.contacts().keySet());
            } else if (!call.startsWith(Rung.ROSTER)) {
                people.add(call);
            } else if (seen.add(call)) {
                Roster roster = setup.rosters().get(call.substring(Rung.ROSTER.length()));
                if (roster != null) {
                    Stream<String> reliefs = roster.reliefs().stream().map(Relief::contact);
                    behind(Stream.concat(roster.order().stream(), reliefs).toList(), setup, seen, people);
                }
            }
        }
    }
}
