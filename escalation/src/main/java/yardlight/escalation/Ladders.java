package yardlight.escalation;

import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;

/** Which ladder is climbed, as it is set up now: an edit counts from the next step on. */
final class Ladders {

    private Ladders() {}

    static Ladder of(Draft draft, String site) {
        return draft.setup()
                .site(site)
                .map(known -> draft.setup().ladders().get(known.ladder()))
                .orElse(Ladder.EVERYBODY_ONCE);
    }

    /** That a site was not shut in is for everybody, whatever the site's own ladder says. */
    static Ladder of(Draft draft, Callout.Facts facts) {
        return ShutInAlarm.is(facts) ? ShutInAlarm.EVERYONE : of(draft, facts.site());
    }
}
