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
        return gauge.box()
                .flatMap(draft::box)
                .filter(watch -> expected(watch).isPresent() ? silent(watch, gauge) : anotherIsMissed(watch, gauge))
                .isPresent();
    }

    private boolean silent(BoxWatch watch, Gauge gauge) {
        boolean heardSince =
                gauge.heardAt().filter(at -> watch.heardAt().isAfter(at)).isPresent();
        return watch.silent() || watch.overdue(draft.now()) || !heardSince;
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

    /**
     * Another point stands for the box only if it began to be missed after the box last spoke: before that it was its own
     * sensor. What is kept from people stands for nothing.
     */
    private boolean anotherIsMissed(BoxWatch watch, Gauge gauge) {
        return draft.alarmsAt(gauge.key().site()).stream()
                .filter(alarm -> alarm.active() && !alarm.state().withheld())
                .filter(alarm -> alarm.activations().stream().anyMatch(watch.heardAt()::isBefore))
                .map(Alarm::key)
                .filter(key -> key.condition().equals(Conditions.MISSING)
                        && !key.point().equals(gauge.key().point()))
                .anyMatch(key -> draft.gauge(new Gauge.Key(key.site(), key.point()))
                        .box()
                        .equals(gauge.box()));
    }
}
