package yardlight.escalation.heartbeat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Random;

/**
 * Heartbeats of boxes over a link that loses a share of them, independently of each other, and is late with the rest:
 * lognormal, as cellular latency usually is taken to be (common practice, no source).
 *
 * @param loss chance that a heartbeat is lost
 * @param goesOn chance that the one after a lost one is lost too; the same as {@code loss} for independent losses
 * @param latency its median, in seconds
 * @param tail standard deviation of its logarithm
 */
record Link(double loss, double goesOn, double interval, double latency, double tail) {

    private static final double YEAR = 365 * 86_400;
    private static final Instant START = Instant.parse("2026-01-01T00:00:00Z");

    /**
     * What boxes went through. How often a silence becomes a wrong alarm is not counted, which would take thousands of years,
     * but worked out at each heartbeat: the chance that none comes within the patience that the box has then.
     *
     * @param settled wrong alarms a year once the first thousand heartbeats are over
     * @param first wrong alarms in a box's first year
     * @param counted wrong alarms that happened, of all boxes
     * @param detection mean time from the end of a box to its alarm, in seconds, once it is settled
     */
    record Outcome(double settled, double first, int counted, double detection) {}

    Link(double loss, double interval, double latency, double tail) {
        this(loss, loss, interval, latency, tail);
    }

    Outcome play(Patience patience, int boxes, int heartbeats, long seed) {
        var random = new Random(seed);
        var sums = new Sums();
        for (int i = 0; i < boxes; i++) {
            play(patience, heartbeats, random, sums);
        }
        double settled = sums.chance / sums.time * YEAR;
        double young = sums.youngChance / boxes;
        return new Outcome(
                settled, young + settled * (1 - 1_000 * interval / YEAR), sums.counted, sums.detection / sums.time);
    }

    private static final class Sums {
        double youngChance;
        double chance;
        double time;
        double detection;
        int counted;
    }

    private void play(Patience patience, int heartbeats, Random random, Sums sums) {
        var watch = new BoxWatch("box", START, Optional.empty(), false, Heartbeat.BARE);
        long beat = 0;
        double arrived = 0;
        for (int heard = 0; heard < heartbeats; heard++) {
            Instant now = START.plusNanos((long) (arrived * 1e9));
            Arrivals arrivals = patience.heard(watch, Optional.of(Heartbeat.BARE), now, Instant.EPOCH);
            Duration may = patience.after(arrivals);
            watch = watch.with(arrivals).heard(now, Optional.of(may), Heartbeat.BARE);
            double seconds = may.toNanos() / 1e9;
            double late = arrived - beat * interval;
            long next = beat + 1;
            for (double chance = loss; random.nextDouble() < chance; chance = goesOn) {
                next++;
            }
            double then = Math.max(arrived, next * interval + latency(random));
            double gap = then - arrived;
            if (heard < 1_000) {
                sums.youngChance += chance(seconds + late);
            } else {
                sums.chance += chance(seconds + late);
                sums.time += gap;
                double until = Math.min(gap, seconds);
                sums.detection += seconds * until - until * until / 2;
            }
            if (gap > seconds) {
                watch = watch.gone(Path.site("mesa-9"));
                sums.counted++;
            }
            beat = next;
            arrived = then;
        }
    }

    private double latency(Random random) {
        return latency * Math.exp(tail * random.nextGaussian());
    }

    /** The chance that no heartbeat arrives within so many seconds after the one before was sent. */
    private double chance(double within) {
        double none = 1;
        double lost = loss;
        for (int i = 1; i * interval < within; i++) {
            double deviations = Math.log((within - i * interval) / latency) / tail;
            double later = deviations > 7 ? 0 : Math.pow(10, -Phi.of(deviations, 0, 1));
            none *= lost + (1 - lost) * later;
            lost = goesOn;
        }
        return none;
    }
}
