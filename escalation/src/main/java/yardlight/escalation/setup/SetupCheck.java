package yardlight.escalation.setup;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;

/**
 * Finds all that is wrong with a setup taken as a whole: names that lead nowhere or in a circle, ids that come twice,
 * people who cannot be reached. What is wrong with one value alone its own record refuses.
 */
public final class SetupCheck {

    private final Set<String> channels;

    /** Checks against these names of channels: a line may use no other. */
    public SetupCheck(Set<String> channels) {
        this.channels = new TreeSet<>(channels);
    }

    /** Every mistake, list by list; empty when a {@link Setup} can be made of the draft. */
    public List<Mistake> check(Draft draft) {
        var found = new Findings(Names.of(draft));
        sites(draft, found);
        ShutInCheck.sites(draft, found);
        boxes(draft, found);
        points(draft, found);
        contacts(draft, found);
        EquipmentCheck.pumps(draft, found);
        SuppressionCheck.circles(draft, found);
        RosterCheck.rosters(draft, found);
        ladders(draft, found);
        return found.all();
    }

    private static void sites(Draft draft, Findings found) {
        found.mustBeUnique("sites", draft.sites(), Site::id);
        for (int i = 0; i < draft.sites().size(); i++) {
            String ladder = draft.sites().get(i).ladder();
            found.mustExist("ladder", ladder, found.names().ladders(), "#/sites/" + i + "/ladder");
        }
    }

    private static void boxes(Draft draft, Findings found) {
        found.mustBeUnique("boxes", draft.boxes(), Box::id);
        for (int i = 0; i < draft.boxes().size(); i++) {
            String site = draft.boxes().get(i).site();
            found.mustExist("site", site, found.names().sites(), "#/boxes/" + i + "/site");
        }
    }

    private static void points(Draft draft, Findings found) {
        // Two sites may each have a water tank.
        found.mustBeUnique("points", draft.points(), point -> point.site() + "/" + point.id());
        for (int i = 0; i < draft.points().size(); i++) {
            Point point = draft.points().get(i);
            found.mustExist("site", point.site(), found.names().sites(), "#/points/" + i + "/site");
            for (String other : point.suppressedWhile()) {
                suppressedWhile(point, other, "#/points/" + i + "/suppressedWhile", found);
            }
        }
    }

    private static void suppressedWhile(Point point, String other, String pointer, Findings found) {
        String[] parts = other.split("/", -1);
        boolean named = parts.length == 2
                && AlarmKey.ID.matcher(parts[0]).matches()
                && AlarmKey.ID.matcher(parts[1]).matches();
        if (!named) {
            found.add(pointer, "must.have-form", "suppressedWhile must have the form point/condition: " + other, other);
        } else if (parts[0].equals(point.id())) {
            found.add(
                    pointer,
                    "must.not-suppress-itself",
                    "suppressedWhile must not name the point itself: " + other,
                    other);
        }
    }

    private void contacts(Draft draft, Findings found) {
        found.mustBeUnique("contacts", draft.contacts(), Contact::id);
        for (int i = 0; i < draft.contacts().size(); i++) {
            Contact contact = draft.contacts().get(i);
            if (contact.id().equals(Rung.EVERYONE)) {
                found.add(
                        "#/contacts/" + i + "/id",
                        "must.not-be-all",
                        "id of a contact must not be the word for all: everyone");
            }
            if (contact.lines().isEmpty()) {
                found.add(
                        "#/contacts/" + i + "/lines",
                        "must.have-lines",
                        "lines must not be empty: " + contact.id(),
                        contact.id());
            }
            channels(contact, "#/contacts/" + i + "/lines", found);
        }
    }

    private void channels(Contact contact, String pointer, Findings found) {
        for (int i = 0; i < contact.lines().size(); i++) {
            String channel = contact.lines().get(i).channel();
            if (!channels.contains(channel)) {
                String known = String.join(", ", channels);
                String english = "channel must be one of " + known + ": " + channel;
                found.add(pointer + "/" + i + "/channel", "must.be-channel", english, known, channel);
            }
        }
    }

    private static void ladders(Draft draft, Findings found) {
        found.mustBeUnique("ladders", draft.ladders(), Ladder::id);
        for (int i = 0; i < draft.ladders().size(); i++) {
            List<Rung> rungs = draft.ladders().get(i).rungs();
            for (int j = 0; j < rungs.size(); j++) {
                rung(rungs.get(j), "#/ladders/" + i + "/rungs/" + j + "/call/", found);
            }
        }
    }

    private static void rung(Rung rung, String pointer, Findings found) {
        for (int i = 0; i < rung.call().size(); i++) {
            String name = rung.call().get(i);
            if (!name.equals(Rung.EVERYONE)) {
                found.mustBeSomebody(name, pointer + i);
            }
        }
    }
}
