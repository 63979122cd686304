package yardlight.escalation.setup;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.shutin.Terms;

/** Finds what is wrong with how sites are asked to shut in: by a box that is not theirs, or one that is heard too rarely. */
final class ShutInCheck {

    private ShutInCheck() {}

    static void sites(Draft draft, Findings found) {
        Map<String, Box> boxes =
                draft.boxes().stream().collect(Collectors.toMap(Box::id, Function.identity(), (one, other) -> one));
        for (int i = 0; i < draft.sites().size(); i++) {
            Site site = draft.sites().get(i);
            String pointer = "#/sites/" + i + "/shutIn";
            site.shutIn()
                    .filter(terms -> terms.way() == Terms.Way.BOX)
                    .ifPresent(
                            terms -> box(site, terms, Optional.ofNullable(boxes.get(terms.through())), pointer, found));
        }
        for (int i = 0; i < draft.ladders().size(); i++) {
            ladder(draft.ladders().get(i), "#/ladders/" + i + "/rungs", found);
        }
    }

    private static void box(Site site, Terms terms, Optional<Box> box, String pointer, Findings found) {
        if (box.filter(known -> known.site().equals(site.id())).isEmpty()) {
            String english = "box must be one of the site: " + terms.through();
            found.add(pointer + "/box", "must.be-at-the-site", english, "box", terms.through());
        }
        Optional<Duration> every = box.flatMap(Box::every);
        if (every.filter(one -> one.compareTo(terms.expires()) >= 0).isPresent()) {
            String english = "expires must be longer than the box's heartbeat takes: " + terms.expires();
            found.add(
                    pointer + "/expires",
                    "must.outlast-a-heartbeat",
                    english,
                    terms.expires().toString());
        }
    }

    /** A ladder on which nobody is called at all would ask in nobody's name, and tell nobody. */
    private static void ladder(Ladder ladder, String pointer, Findings found) {
        List<Rung> rungs = ladder.rungs();
        if (!rungs.isEmpty() && rungs.stream().allMatch(rung -> rung.call().isEmpty())) {
            found.add(
                    pointer,
                    "must.call-somebody",
                    "rungs must call somebody, not only ask: " + ladder.id(),
                    ladder.id());
        }
    }
}
