package yardlight.escalation;

import java.util.Optional;
import java.util.stream.Stream;

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

    private Stream<Boolean> said(String site, String feed) {
        return draft.setup().boxesAt(site).stream()
                .flatMap(box -> draft.box(box.id()).stream())
                .flatMap(watch -> Optional.ofNullable(watch.last().feeds().get(feed)).stream());
    }
}
