package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.limit.Conditions;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.setup.Box;

/** Why a point is not read: while its box says nothing at all, that is no matter of the point's own. */
final class Unread {

    private final Draft draft;

    Unread(Draft draft) {
        this.draft = draft;
    }

    /**
     * Whether the box that read the point says nothing, and somebody is told of that in another way: by its own alarm, or, if
     * nobody expects to hear from it, by the first of its points that is missed. The last that a box says before it dies is
     * mostly a heartbeat, so that one which came after the reading does not speak for a box that has missed its deadline since.
     */
    boolean boxIsQuiet(Gauge gauge) {
        Optional<BoxWatch> watch = gauge.box().flatMap(draft::box);
        if (watch.isEmpty()) {
            return false;
        }
        BoxWatch known = watch.get();
        boolean heardSince =
                gauge.heardAt().filter(at -> known.heardAt().isAfter(at)).isPresent();
        return expected(known).isPresent()
                ? known.silent() || known.overdue(draft.now()) || !heardSince
                : !heardSince && anotherIsMissed(gauge);
    }

    /**
     * By when it is known whether the box is silent. Empty unless it has missed a heartbeat. A box that is well does that too,
     * now and then or all the time: so once it was heard after the point was due it is waited for no longer.
     *
     * @param missing how long the point may be without a reading
     */
    Optional<Instant> boxIsKnown(Gauge gauge, Duration missing) {
        return gauge.box()
                .flatMap(draft::box)
                .filter(watch -> gauge.heardAt()
                        .filter(at -> !watch.heardAt().isAfter(at.plus(missing)))
                        .isPresent())
                .filter(watch -> expected(watch)
                        .flatMap(Box::every)
                        .filter(every -> !watch.heardAt().plus(every).isAfter(draft.now()))
                        .isPresent())
                .flatMap(BoxWatch::deadline);
    }

    /** The box, if its silence is or becomes an alarm. One that was put back into the setup is waited for once it has spoken. */
    private Optional<Box> expected(BoxWatch watch) {
        return Optional.ofNullable(draft.setup().boxes().get(watch.box()))
                .filter(box -> box.every().isPresent())
                .filter(box -> watch.silent() || watch.deadline().isPresent());
    }

    private boolean anotherIsMissed(Gauge gauge) {
        return draft.alarmsAt(gauge.key().site()).stream()
                .filter(Alarm::active)
                .map(Alarm::key)
                .filter(key -> key.condition().equals(Conditions.MISSING)
                        && !key.point().equals(gauge.key().point()))
                .anyMatch(key -> draft.gauge(new Gauge.Key(key.site(), key.point()))
                        .box()
                        .equals(gauge.box()));
    }
}
