package yardlight.escalation.setup;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.roster.Roster;

/** What names in a draft may lead to. Gathered once: a hundred thousand boxes each name a site. */
record Names(Set<String> sites, Set<String> contacts, Set<String> rosters, Set<String> ladders) {

    static Names of(Draft draft) {
        return new Names(
                ids(draft.sites(), Site::id),
                ids(draft.contacts(), Contact::id),
                ids(draft.rosters(), Roster::id),
                ids(draft.ladders(), Ladder::id));
    }

    private static <T> Set<String> ids(List<T> things, Function<T, String> id) {
        return things.stream().map(id).collect(Collectors.toUnmodifiableSet());
    }
}
