package yardlight.escalation.filling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Fills tanks of which the truth is known and foretells when they run over, an hour before. How many, and by which seed: {@code
 * -Dyardlight.study.fillings}, {@code .seed}; with {@code -Dyardlight.study.sensitivity=true} also at other times and in worlds
 * that are worse than the one that was chosen. The tables go to standard output and stand in docs/tank-study.md.
 */
class FillingStudyTest {

    private static final int FILLINGS = Integer.getInteger("yardlight.study.fillings", 1_000);
    private static final long SEED = Long.getLong("yardlight.study.seed", 1);
    private static final int HOUR = 60;

    private static Foretold foretold;

    @BeforeAll
    static void fill() {
        foretold = Foretold.of(World.AS_CHOSEN, SEED, FILLINGS, HOUR, 1);
        System.out.println("seed " + SEED + ", " + FILLINGS + " fillings");
        System.out.println(Foretold.HEAD);
        System.out.println(foretold.line("as chosen, an hour before, a reading a minute"));
    }

    @Test
    void an_hour_before_the_median_error_is_at_most_a_tenth() {
        assertThat(foretold.median()).isLessThanOrEqualTo(0.10);
    }

    @Test
    void the_interval_holds_in_nine_cases_of_ten() {
        assertThat(foretold.covered()).isGreaterThanOrEqualTo(0.90);
    }

    /** An interval of any width would hold. */
    @Test
    void the_interval_is_no_wider_than_people_can_use() {
        assertThat(foretold.width()).isLessThan(0.75);
    }

    @Test
    void the_same_seed_gives_the_same() {
        assertThat(Foretold.of(World.AS_CHOSEN, SEED, 50, HOUR, 1))
                .isEqualTo(Foretold.of(World.AS_CHOSEN, SEED, 50, HOUR, 1));
        assertThat(Foretold.of(World.AS_CHOSEN, SEED + 1, 50, HOUR, 1))
                .isNotEqualTo(Foretold.of(World.AS_CHOSEN, SEED, 50, HOUR, 1));
    }

    @Test
    void what_it_depends_on_is_printed_on_demand() {
        if (Boolean.getBoolean("yardlight.study.sensitivity")) {
            for (int before : new int[] {30, 120}) {
                print("as chosen, " + before + " minutes before", World.AS_CHOSEN, before, 1);
            }
            print("as chosen, a reading each 5 minutes", World.AS_CHOSEN, HOUR, 5);
            print("as chosen, a reading each 15 minutes", World.AS_CHOSEN, HOUR, 15);
            worlds().forEach((what, world) -> print(what, world, HOUR, 1));
        }
    }

    private static void print(String what, World world, int before, int every) {
        System.out.println(Foretold.of(world, SEED, FILLINGS, before, every).line(what));
    }

    private static Map<String, World> worlds() {
        var worlds = new LinkedHashMap<String, World>();
        worlds.put("no slugs, no drift, no steps", new World(0, 15, 0.05, 0, 0));
        worlds.put("up to 60 of 100 in slugs", new World(0.6, 15, 0.05, 0.1, 0.2));
        worlds.put("slugs up to 40 minutes apart", new World(0.3, 40, 0.05, 0.1, 0.2));
        worlds.put("noise up to 0.2 ft", new World(0.3, 15, 0.2, 0.1, 0.2));
        worlds.put("twice the drift", new World(0.3, 15, 0.05, 0.2, 0.2));
        worlds.put("a step in each filling", new World(0.3, 15, 0.05, 0.1, 1));
        return worlds;
    }

    /** @param width of the interval as a share of the time left, median */
    private record Foretold(
            int fillings, double median, double ninth, double covered, double notTooLate, double width) {

        static final String HEAD =
                "| world | median error | 9 of 10 below | interval holds | lower end not too late | its width, median |"
                        + System.lineSeparator()
                        + "| --- | --- | --- | --- | --- | --- |";

        static Foretold of(World world, long seed, int fillings, int before, int every) {
            var errors = new double[fillings];
            var widths = new double[fillings];
            int covered = 0;
            int inTime = 0;
            for (int i = 0; i < fillings; i++) {
                Mark mark = Mark.of(world, seed, i, before, every);
                errors[i] = mark.error();
                widths[i] = mark.width().orElse(Double.POSITIVE_INFINITY);
                covered += mark.covered() ? 1 : 0;
                inTime += mark.inTime() ? 1 : 0;
            }
            java.util.Arrays.sort(errors);
            java.util.Arrays.sort(widths);
            double all = fillings;
            return new Foretold(
                    fillings,
                    errors[fillings / 2],
                    errors[fillings * 9 / 10],
                    covered / all,
                    inTime / all,
                    widths[fillings / 2]);
        }

        String line(String what) {
            return String.format(
                    Locale.ROOT,
                    "| %s | %.3f | %.3f | %.3f | %.3f | %.2f |",
                    what,
                    median,
                    ninth,
                    covered,
                    notTooLate,
                    width);
        }
    }
}
