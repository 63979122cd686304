package yardlight.escalation.heartbeat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * What is known of a box.
 *
 * @param heardAt when it last posted anything
 * @param deadline when its silence becomes an alarm; while it is silent until when it has time to start, its power being back;
 *     empty when neither is so
 * @param silent whether its silence is an alarm now
 * @param last what it last said of itself
 * @param absence the silence that it belongs to, or that it belonged to and has not explained yet by its uptime
 * @param habit what it usually says
 * @param arrivals what was learned of the times at which it is heard
 */
public record BoxWatch(
        String box,
        Instant heardAt,
        Optional<Instant> deadline,
        boolean silent,
        Heartbeat last,
        Optional<Path> absence,
        Habit habit,
        Arrivals arrivals) {

    /** A box of which nothing else is known. */
    public BoxWatch(String box, Instant heardAt, Optional<Instant> deadline, boolean silent, Heartbeat last) {
        this(box, heardAt, deadline, silent, last, Optional.empty(), Habit.NONE, Arrivals.NONE);
    }

    /**
     * The box after a sign of life. What it did not say this time is as it said last.
     *
     * @param patience how long it may be silent from now on; empty when no heartbeat is expected
     */
    public BoxWatch heard(Instant now, Optional<Duration> patience, Heartbeat said) {
        Optional<Path> unexplained = said.uptime().isPresent() ? Optional.empty() : absence;
        return new BoxWatch(
                box, now, patience.map(now::plus), false, said.after(last), unexplained, habit.after(said), arrivals);
    }

    /** Whether its deadline has passed. */
    public boolean overdue(Instant now) {
        return deadline.filter(at -> !at.isAfter(now)).isPresent();
    }

    /** The box once its deadline has passed. */
    public BoxWatch gone(Path with) {
        return new BoxWatch(box, heardAt, Optional.empty(), true, last, Optional.of(with), habit, arrivals.lapse());
    }

    /** The box as if nobody had found it silent yet. */
    public BoxWatch dueAgain(Instant at) {
        return new BoxWatch(box, heardAt, Optional.of(at), false, last, Optional.empty(), habit, arrivals);
    }

    /** The box with another deadline. */
    public BoxWatch with(Optional<Instant> next) {
        return new BoxWatch(box, heardAt, next, silent, last, absence, habit, arrivals);
    }

    /** A box from which nobody expects to hear. */
    public BoxWatch unexpected(Heartbeat said) {
        return new BoxWatch(box, heardAt, Optional.empty(), false, said, Optional.empty(), habit, Arrivals.NONE);
    }

    /** The box with more learned of it. */
    public BoxWatch with(Arrivals learned) {
        return new BoxWatch(box, heardAt, deadline, silent, last, absence, habit, learned);
    }
}
