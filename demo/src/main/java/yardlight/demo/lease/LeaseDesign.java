package yardlight.demo.lease;

import java.util.List;
import java.util.Random;

/**
 * How big everything at a lease is.
 *
 * @param wells what each well lifts, bbl a day of water and oil together
 * @param waterCut share of it that is water
 * @param pump what the injection pump moves, bbl a day
 * @param floats at which levels of the water tank the float switch starts and stops the pump
 * @param brim height of both tanks, ft; they are upright and {@value #DIAMETER} ft across
 * @param highSwitch level at which the plain switch at the top of the water tank trips, ft
 */
public record LeaseDesign(
        List<Double> wells, double waterCut, double pump, Floats floats, double brim, double highSwitch) {

    /** Inside diameter of both tanks, ft. */
    public static final double DIAMETER = 12;

    /**
     * The two levels of a float switch, ft above the bottom.
     *
     * @param start the pump runs once the level is at it
     * @param stop the pump stops once the level is at it
     */
    public record Floats(double start, double stop) {
        public Floats {
            if (!(stop > 0 && stop < start)) {
                throw new IllegalArgumentException("floats must stop below where they start: " + stop + ", " + start);
            }
        }
    }

    public LeaseDesign {
        wells = List.copyOf(wells);
        if (wells.isEmpty() || wells.stream().anyMatch(rate -> !(rate > 0))) {
            throw new IllegalArgumentException("wells must lift something: " + wells);
        }
        if (!(waterCut > 0 && waterCut < 1)) {
            throw new IllegalArgumentException("water cut must lie between 0 and 1: " + waterCut);
        }
        if (!(floats.start() < highSwitch && highSwitch < brim)) {
            throw new IllegalArgumentException("high switch must lie between float and brim: " + highSwitch);
        }
    }

    /** Four wells, 645 bbl a day, of which 600 are water; the pump has to run 63 % of the day. */
    public static LeaseDesign plain() {
        return new LeaseDesign(List.of(240.0, 175.0, 130.0, 100.0), 0.93, 952, new Floats(6, 3), 20, 18.5);
    }

    /** A lease drawn by lot: 500 to 1,200 bbl a day from three to six wells, a pump that runs 58 to 73 % of the day. */
    public static LeaseDesign drawn(long seed) {
        var random = new Random(seed);
        double all = between(random, 500, 1_200);
        double waterCut = between(random, 0.88, 0.96);
        double share = between(random, 0.58, 0.73);
        List<Double> weights =
                random.doubles(3L + random.nextInt(4), 1, 2.5).boxed().toList();
        double sum = weights.stream().mapToDouble(Double::doubleValue).sum();
        List<Double> wells = weights.stream().map(weight -> all * weight / sum).toList();
        double start = between(random, 5, 7.5);
        return new LeaseDesign(
                wells, waterCut, all * waterCut / share, new Floats(start, start - between(random, 2, 3)), 20, 18.5);
    }

    /** What all wells lift together, bbl a day. */
    public double lifted() {
        return wells.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** The share of the day that the pump has to run. */
    public double share() {
        return lifted() * waterCut / pump;
    }

    static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
