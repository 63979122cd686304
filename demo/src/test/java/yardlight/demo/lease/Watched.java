package yardlight.demo.lease;

import java.time.Duration;
import java.util.function.ToDoubleFunction;

/** Lets a lease run minute by minute and looks at it. */
final class Watched {

    private static final Duration MINUTE = Duration.ofMinutes(1);

    private Watched() {}

    /** A lease that has run for five days and is well. */
    static Lease running(long seed) {
        var lease = new Lease(LeaseDesign.drawn(seed), seed);
        lease.step(Duration.ofDays(5));
        return lease;
    }

    /** The same, stopped while its pump runs with at least so much above the float switch's lower level, ft. */
    static Lease pumping(long seed, double above) {
        Lease lease = running(seed);
        until(lease, above);
        return lease;
    }

    private static void until(Lease lease, double above) {
        while (!(lease.readings().pump()
                && lease.waterLevel() > lease.design().floats().stop() + above)) {
            lease.step(MINUTE);
        }
    }

    /** The mean of what was seen in each minute. */
    static double mean(Lease lease, Duration length, ToDoubleFunction<Lease> what) {
        double sum = 0;
        for (long minute = 0; minute < length.toMinutes(); minute++) {
            lease.step(MINUTE);
            sum += what.applyAsDouble(lease);
        }
        return sum / length.toMinutes();
    }

    /** The share of the time that the pump ran. */
    static double pumpShare(Lease lease, Duration length) {
        return mean(lease, length, at -> at.readings().pump() ? 1 : 0);
    }

    /** Minutes until this holds, or the limit. */
    static long minutes(Lease lease, Duration limit, java.util.function.Predicate<Lease> holds) {
        long minute = 0;
        while (minute < limit.toMinutes() && !holds.test(lease)) {
            lease.step(MINUTE);
            minute++;
        }
        return minute;
    }
}
