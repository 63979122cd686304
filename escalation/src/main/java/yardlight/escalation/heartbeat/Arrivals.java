package yardlight.escalation.heartbeat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * What was learned of the times at which a box's heartbeats arrive. As small after years as after an hour. Nothing is
 * learned from a silence that became an alarm, from one beyond the longest patience, or from a time in which the gateway
 * could not hear (Karn's rule, RFC 6298, 3: no sample that may be of something else).
 *
 * @param since the heartbeat from which on the next gap is measured; empty when none may be
 * @param pace interval of the heartbeats that came one after the other
 * @param odd how many gaps in a row were not one interval long
 * @param gap the last one, in seconds
 * @param lapses silences that became an alarm since a gap was learned
 */
public record Arrivals(Optional<Instant> since, Smoothed pace, Losses losses, int odd, double gap, int lapses) {

    public static final Arrivals NONE = new Arrivals(Optional.empty(), Smoothed.UNKNOWN, Losses.NONE, 0, 0, 0);

    /** Heartbeats nearer to each other than this part of an interval are one that was sent again, or a backlog. */
    private static final double BURST = 0.2;

    /** So many odd gaps in a row are no accident, at a loss of 30 % once in two million: the box has another interval. */
    private static final int CHANGED = 12;

    /** What is known from storage. */
    public static Arrivals of(Optional<Instant> since, double[] numbers) {
        return new Arrivals(
                since,
                new Smoothed(numbers[0], numbers[1]),
                new Losses(numbers[2], numbers[3], numbers[4]),
                (int) numbers[5],
                numbers[6],
                (int) numbers[7]);
    }

    /** All that is known beside {@link #since}, for storage. */
    public double[] numbers() {
        return new double[] {
            pace.mean(), pace.deviation(), losses.heard(), losses.lost(), losses.runs(), odd, gap, lapses
        };
    }

    /**
     * A heartbeat arrived.
     *
     * @param open since when every heartbeat would have been heard
     * @param least gaps below this are bursts, whatever the interval
     * @param most gaps above this are outages
     */
    Arrivals heartbeat(Instant now, Instant open, Duration least, Duration most) {
        Optional<Duration> passed = since.filter(at -> !at.isBefore(open))
                .map(at -> Duration.between(at, now))
                .filter(span -> !span.isNegative() && span.compareTo(most) <= 0);
        if (passed.isEmpty()) {
            return from(now);
        }
        double seconds = passed.get().toNanos() / 1e9;
        boolean burst = passed.get().compareTo(least) < 0 || seconds < pace.mean() * BURST;
        return burst ? this : from(now).learn(seconds);
    }

    /** The silence became an alarm: what comes next ends an outage and is no interval. */
    Arrivals lapse() {
        return new Arrivals(Optional.empty(), pace, losses, odd, gap, lapses + 1);
    }

    /** Nothing can have been heard for a while: the next gap says nothing. */
    public Arrivals interrupted() {
        return new Arrivals(Optional.empty(), pace, losses, odd, gap, lapses);
    }

    /**
     * The alarm was wrong: so many heartbeats were lost before it. The silence itself is not learned, only that it was longer
     * than thought possible; or a link that gets worse would raise one alarm after the other and never be known for it.
     */
    Arrivals wrong(int missed) {
        return new Arrivals(since, pace, losses.next(missed), odd, gap, lapses);
    }

    private Arrivals from(Instant now) {
        return new Arrivals(Optional.of(now), pace, losses, odd, gap, lapses);
    }

    private Arrivals learn(double seconds) {
        if (pace.mean() == 0) {
            return new Arrivals(since, Smoothed.first(seconds), losses.next(0), 0, seconds, 0);
        }
        int intervals = (int) Math.round(seconds / pace.mean());
        if (intervals == 1) {
            return new Arrivals(since, pace.next(seconds), losses.next(0), 0, seconds, 0);
        }
        if (odd + 1 >= CHANGED) {
            return new Arrivals(since, Smoothed.first(seconds), Losses.NONE, 0, seconds, 0);
        }
        // One that comes early follows one that was late, which was counted as a loss already.
        Losses known = intervals == 0 ? losses : losses.next(intervals - 1);
        return new Arrivals(since, pace, known, odd + 1, seconds, 0);
    }
}
