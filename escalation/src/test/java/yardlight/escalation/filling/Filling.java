package yardlight.escalation.filling;

import java.util.SplittableRandom;
import yardlight.escalation.tank.Tank;
import yardlight.escalation.tank.Upright;

/**
 * One filling of a tank that nothing empties, minute by minute, from some height up to the brim.
 *
 * @param truth the true height at each minute in ft; the last is at the brim or above
 * @param posted what the sensor says of it
 */
record Filling(Tank tank, double[] truth, double[] posted) {

    private static final double BARREL = 9702.0 / 1728;
    private static final double HOURS_OF_DRIFT = 3;
    private static final int LONGEST = 60 * 48;

    static Filling draw(World world, SplittableRandom random) {
        return new Draw(world, random).filling();
    }

    /** The minute at which it ran over. */
    int over() {
        return truth.length - 1;
    }

    /** The chances of one filling. */
    private static final class Draw {
        private final SplittableRandom random;
        private final World world;
        private final Tank tank;
        private final double mean;
        private final double slugs;
        private final double slugEvery;
        private final double noise;
        private double drift;
        private double slugLeft;
        private double slugRate;

        Draw(World world, SplittableRandom random) {
            this.random = random;
            this.world = world;
            double[][] sizes = {{12, 20}, {12, 15}, {15.5, 24}, {10, 15}, {12, 25}};
            double[] size = sizes[random.nextInt(sizes.length)];
            tank = new Upright(size[0], size[1]);
            mean = between(5, 60) * BARREL / 60;
            slugs = between(0, world.slugs());
            slugEvery = between(3, world.slugEvery());
            noise = between(0.005, world.noise());
            drift = world.drift() * normal();
        }

        Filling filling() {
            // So high at first that it takes 2 to 12 hours.
            double volume = Math.max(0, tank.capacity() - mean * 60 * between(2, 12));
            int stepAt = random.nextDouble() < world.steps() ? random.nextInt(60 * 10) : LONGEST;
            double step = between(0.15, 0.6) * (random.nextBoolean() ? 1 : -1);
            var truth = new double[LONGEST];
            int minute = 0;
            while (volume < tank.capacity() && minute < LONGEST - 1) {
                truth[minute++] = tank.height(volume);
                volume += inflow(minute < stepAt ? 1 : 1 + step);
            }
            truth[minute++] = tank.brim();
            var posted = new double[minute];
            for (int i = 0; i < minute; i++) {
                posted[i] = Math.rint((truth[i] + noise * normal()) * 100) / 100;
            }
            return new Filling(tank, java.util.Arrays.copyOf(truth, minute), posted);
        }

        /** Cubic feet in one minute. */
        private double inflow(double step) {
            double hours = 1.0 / 60;
            drift += -drift * hours / HOURS_OF_DRIFT + world.drift() * Math.sqrt(2 * hours / HOURS_OF_DRIFT) * normal();
            if (random.nextDouble() < 1 / slugEvery) {
                double minutes = 1 + random.nextInt(3);
                slugRate = mean * slugs * slugEvery * -Math.log(1 - random.nextDouble()) / minutes;
                slugLeft = minutes;
            }
            double slug = slugLeft > 0 ? slugRate : 0;
            slugLeft--;
            return step * Math.max(0, mean * (1 - slugs) * (1 + drift) + slug);
        }

        private double between(double low, double high) {
            return low + (high - low) * random.nextDouble();
        }

        /** Normal, by Box and Muller: the source of the JDK 17 with a seed has no promise about its own. */
        private double normal() {
            return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
        }
    }
}
