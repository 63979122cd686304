package yardlight.escalation.heartbeat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * For how long a box may be silent before that is an alarm: as it was set up, or by what was learned of its arrivals. What is
 * learned is how many heartbeats in a row get lost no more than once in two years, and how late one is, with all before it but
 * one lost, no more than once in two years: together one wrong alarm a year.
 *
 * @param every interval that the box is asked for
 * @param grace how late a heartbeat may be, as long as nothing else was learned
 */
public record Patience(Duration every, Duration grace, boolean learned) {

    /** For losses; as many again are for lateness. */
    private static final double WRONG_A_YEAR = 0.5;

    private static final double YEAR = 365.0 * 86_400;

    /** Heartbeats that have to be heard before their times count. */
    private static final int ENOUGH = 8;

    /** A single heartbeat that gets lost is never an alarm. Common practice, no source. */
    private static final int FEWEST_MISSES = 2;

    private static final double SHORTEST = 10;

    /** Of the interval that was asked for: no outage is found later than this. */
    private static final int LONGEST = 30;

    /** Heartbeats nearer to each other than this part of the interval that was asked for are one. */
    private static final int BURST = 10;

    private static final double GRANULARITY = 1;

    /** Of an interval: nobody is more punctual than this, so that no deviation is nothing. */
    private static final double LEAST_DEVIATION = 0.05;

    private static final int MOST_DOUBLINGS = 10;

    /**
     * What is known of a box's arrivals once it is heard.
     *
     * @param said empty when it posted something else than a heartbeat: a sign of life, but no interval
     * @param open since when every heartbeat would have been heard
     */
    public Arrivals heard(BoxWatch watch, Optional<Heartbeat> said, Instant now, Instant open) {
        if (!learned) {
            return Arrivals.NONE;
        }
        Arrivals known = watch.arrivals();
        if (watch.silent() && wasWrong(watch, said, now)) {
            known = known.wrong((int) Math.max(1, before(known) / known.pace().mean()));
        }
        return said.isEmpty() ? known : known.heartbeat(now, open, every.dividedBy(BURST), longest());
    }

    /** How long the box may be silent from its last sign of life on. */
    public Duration after(Arrivals known) {
        return learned
                ? Duration.ofMillis((long) Math.ceil(1_000 * allowed(known, known.lapses())))
                : every.plus(grace);
    }

    /**
     * Whether the alarm was wrong: the box was back within one more interval after its deadline, or within the same patience
     * again if it says that it ran all the time. One that says that it started anew was gone indeed.
     */
    private boolean wasWrong(BoxWatch watch, Optional<Heartbeat> said, Instant now) {
        double interval = watch.arrivals().pace().mean();
        double patience = before(watch.arrivals());
        double silent = seconds(Duration.between(watch.heardAt(), now));
        Optional<Double> uptime = said.flatMap(Heartbeat::uptime).map(Patience::seconds);
        double most = patience + (uptime.isPresent() ? patience : interval);
        boolean late = silent >= patience && silent <= most;
        return interval > 0 && late && uptime.orElse(silent) >= silent;
    }

    /** The patience that ended when the silence became an alarm. */
    private double before(Arrivals known) {
        return allowed(known, known.lapses() - 1);
    }

    /**
     * @param lapses each doubles it, until a gap is learned again (back-off of RFC 6298, 5.5): the box may have another
     *     interval by now, of which nothing can be learned while each of its gaps is an alarm
     */
    private double allowed(Arrivals known, int lapses) {
        double usual = known.losses().heard() < ENOUGH
                ? Math.max(seconds(every.plus(grace)), known.pace().timeout(GRANULARITY))
                : likely(known);
        double odd = known.odd() > 0 ? Math.max(usual, 2 * known.gap()) : usual;
        double doubled = odd * (1 << Math.min(MOST_DOUBLINGS, Math.max(0, lapses)));
        return Math.min(seconds(longest()), Math.max(SHORTEST, doubled));
    }

    /** The longest row of losses that is to be expected, and how late the heartbeat after it may be. */
    private double likely(Arrivals known) {
        double interval = known.pace().mean();
        double allowed = WRONG_A_YEAR * interval / YEAR;
        int most = (int) Math.ceil(seconds(longest()) / interval);
        int misses = Math.max(FEWEST_MISSES, known.losses().unlikely(allowed, most));
        double phi = Math.max(1, Math.log10(known.losses().chance(misses - 1) / allowed));
        double deviation = Math.max(LEAST_DEVIATION * interval, known.pace().standardDeviation());
        double late = Math.min(interval, Phi.reached(phi, 0, deviation));
        return Math.max(misses * interval, seconds(every)) + late;
    }

    private Duration longest() {
        Duration most = every.multipliedBy(LONGEST);
        Duration fixed = every.plus(grace);
        return most.compareTo(fixed) < 0 ? fixed : most;
    }

    private static double seconds(Duration span) {
        return span.toNanos() / 1e9;
    }
}
