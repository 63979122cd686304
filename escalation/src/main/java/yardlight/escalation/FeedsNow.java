package yardlight.escalation;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yardlight.escalation.heartbeat.BoxWatch;

/** Which feeds of a site are on, by the last word of its boxes. */
final class FeedsNow {

    private final Draft draft;

    FeedsNow(Draft draft) {
        this.draft = draft;
    }

    /** A feed is off as long as any box of the site says so. */
    boolean off(String site, String feed) {
        return said(site, feed).anyMatch(on -> !on);
    }

    /** A feed that is on and drives what fills the tanks of the site. */
    Optional<String> filling(String site) {
        return draft.setup().site(site).stream()
                .flatMap(known -> known.fills().stream())
                .filter(feed -> said(site, feed).anyMatch(on -> on) && !off(site, feed))
                .findFirst();
    }

    /** The last words of a silent box count only as long as no living one speaks of the feed. */
    private Stream<Boolean> said(String site, String feed) {
        List<BoxWatch> speak = draft.setup().boxesAt(site).stream()
                .flatMap(box -> draft.box(box.id()).stream())
                .filter(watch -> watch.last().feeds().containsKey(feed))
                .toList();
        boolean alive = speak.stream().anyMatch(watch -> !watch.silent());
        return speak.stream()
                .filter(watch -> !alive || !watch.silent())
                .map(watch -> watch.last().feeds().get(feed));
    }
}
