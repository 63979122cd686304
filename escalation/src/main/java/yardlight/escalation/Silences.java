package yardlight.escalation;

import java.util.Optional;
import java.util.stream.Stream;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.setup.Box;

/** Finds the silence that an alarm is about. */
final class Silences {

    private final Draft draft;

    Silences(Draft draft) {
        this.draft = draft;
    }

    /** The newest one, over or not. */
    Optional<Absence> behind(AlarmKey key) {
        if (!BoxAlarms.isSilence(key)) {
            return Optional.empty();
        }
        return draft.setup().boxesAt(key.site()).stream()
                .flatMap(this::paths)
                .distinct()
                .flatMap(path -> draft.absence(path).stream())
                .filter(absence -> absence.key().equals(key))
                .findFirst();
    }

    /** A silence is kept under the site, the link or the feed of the box that was missed first. */
    private Stream<Path> paths(Box box) {
        String ladder = Ladders.of(draft, box.site()).id();
        return Stream.of(
                        draft.box(box.id()).flatMap(BoxWatch::absence),
                        Optional.of(Path.site(box.site())),
                        box.link().map(link -> Path.link(link, ladder)),
                        box.feed().map(feed -> Path.feed(feed, ladder)))
                .flatMap(Optional::stream);
    }
}
