package yardlight.escalation;

import java.util.List;
import java.util.Optional;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/** Which sites are heard at the time of the decision. A site is watched when some box of it is expected to send heartbeats. */
final class SitesNow {

    private final Draft draft;

    SitesNow(Draft draft) {
        this.draft = draft;
    }

    List<Site> watched() {
        return draft.setup().sites().values().stream()
                .filter(site -> !expected(site).isEmpty())
                .toList();
    }

    /** The watched sites with a box that is silent, or was never heard, or has not been heard for too long. */
    List<Site> silent() {
        return watched().stream()
                .filter(site -> expected(site).stream().anyMatch(this::silent))
                .toList();
    }

    /** Whether some box has not been heard for too long and nobody has found it silent yet: the gateway was not there. */
    boolean undecided() {
        return draft.setup().boxes().values().stream()
                .filter(box -> box.every().isPresent())
                .anyMatch(box -> draft.box(box.id())
                        .filter(watch -> !watch.silent() && missed(box, watch))
                        .isPresent());
    }

    private List<Box> expected(Site site) {
        Setup setup = draft.setup();
        return setup.boxesAt(site.id()).stream()
                .filter(box -> box.every().isPresent())
                .toList();
    }

    private boolean silent(Box box) {
        Optional<BoxWatch> watch = draft.box(box.id());
        return watch.isEmpty() || watch.get().silent() || missed(box, watch.get());
    }

    /** Not by its deadline alone, which was put off when the gateway could not hear it: until it is heard nobody knows of it. */
    private boolean missed(Box box, BoxWatch watch) {
        return watch.overdue(draft.now())
                || Silence.missedAt(box, watch)
                        .filter(at -> !at.isAfter(draft.now()))
                        .isPresent();
    }
}
