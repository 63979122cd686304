package yardlight.escalation;

import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.setup.Setup;

/** Which ladder is climbed, as it is set up now: an edit counts from the next step on. */
final class Ladders {

    private Ladders() {}

    static Ladder of(Draft draft, String site) {
        return of(draft.setup(), site);
    }

    private static Ladder of(Setup setup, String site) {
        return setup.site(site)
                .map(known -> setup.ladders().get(known.ladder()))
                .orElse(Ladder.EVERYBODY_ONCE);
    }

    static Ladder of(Draft draft, Callout.Facts facts) {
        return of(draft.setup(), facts);
    }

    /** That a site was not shut in is for everybody, whatever the site's own ladder says. */
    static Ladder of(Setup setup, Callout.Facts facts) {
        return ShutInAlarm.is(facts) ? ShutInAlarm.EVERYONE : of(setup, facts.site());
    }
}
