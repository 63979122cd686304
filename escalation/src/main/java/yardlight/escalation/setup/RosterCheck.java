package yardlight.escalation.setup;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.roster.Roster;

/** The part of {@link SetupCheck} that follows rosters, which may name each other but not in a circle. */
final class RosterCheck {

    /** A name in a roster, and where it stands. */
    private record Mention(String name, String pointer) {

        Optional<String> roster() {
            return name.startsWith(Rung.ROSTER) ? Optional.of(name.substring(Rung.ROSTER.length())) : Optional.empty();
        }
    }

    private final Draft draft;

    private RosterCheck(Draft draft) {
        this.draft = draft;
    }

    static void rosters(Draft draft, Findings found) {
        found.mustBeUnique("rosters", draft.rosters(), Roster::id);
        var check = new RosterCheck(draft);
        for (int i = 0; i < draft.rosters().size(); i++) {
            for (Mention mention : check.mentions(i)) {
                found.mustBeSomebody(mention.name(), mention.pointer());
                check.circle(draft.rosters().get(i).id(), mention, found);
            }
        }
    }

    private void circle(String roster, Mention mention, Findings found) {
        mention.roster().flatMap(next -> chain(next, roster, new HashSet<>())).ifPresent(chain -> {
            String walked = roster + " > " + String.join(" > ", chain);
            found.add(mention.pointer(), "must.not-circle", "roster must not lead back to itself: " + walked, walked);
        });
    }

    /** The rosters on the way from one to another, both included; empty when there is no way. */
    private Optional<List<String>> chain(String from, String to, Set<String> been) {
        if (from.equals(to)) {
            return Optional.of(List.of(to));
        }
        if (!been.add(from)) {
            return Optional.empty();
        }
        for (String next : leadsTo(from)) {
            Optional<List<String>> rest = chain(next, to, been);
            if (rest.isPresent()) {
                var chain = new ArrayList<>(List.of(from));
                chain.addAll(rest.get());
                return Optional.of(chain);
            }
        }
        return Optional.empty();
    }

    private List<String> leadsTo(String roster) {
        var next = new ArrayList<String>();
        for (int i = 0; i < draft.rosters().size(); i++) {
            if (draft.rosters().get(i).id().equals(roster)) {
                mentions(i).forEach(mention -> mention.roster().ifPresent(next::add));
            }
        }
        return next;
    }

    private List<Mention> mentions(int index) {
        Roster roster = draft.rosters().get(index);
        var mentions = new ArrayList<Mention>();
        for (int i = 0; i < roster.order().size(); i++) {
            mentions.add(new Mention(roster.order().get(i), "#/rosters/" + index + "/order/" + i));
        }
        for (int i = 0; i < roster.reliefs().size(); i++) {
            String contact = roster.reliefs().get(i).contact();
            mentions.add(new Mention(contact, "#/rosters/" + index + "/reliefs/" + i + "/contact"));
        }
        return mentions;
    }
}
