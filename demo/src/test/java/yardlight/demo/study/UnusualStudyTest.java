package yardlight.demo.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yardlight.demo.lease.Fault;
import yardlight.escalation.runtime.Unusual;

/**
 * What share of the day is unusual for a pump: chosen by leases of some seeds and judged by leases of others. The results of a
 * larger run are in docs/lease-study.md.
 */
class UnusualStudyTest {

    private static final String ASKED = "yardlight.study.pumps";

    /** Leases to choose by, and as many to judge by. */
    private static final long LEASES = Long.getLong(ASKED, 3);

    private static final int QUIET = Integer.getInteger("yardlight.study.pump-days", 60);

    private static final long TO_CHOOSE = 1_000;
    private static final long TO_JUDGE = 2_000;

    /** More calls for nothing than this in a year of a lease are not worth any well that they find. */
    private static final double MOST_FALSE = 0.5;

    private static final List<Unusual> CANDIDATES = Stream.of(0.06, 0.07, 0.08, 0.1)
            .flatMap(least -> Stream.of(3.0, 4.0, 5.0).map(deviations -> new Unusual(least, deviations)))
            .toList();

    @Test
    void the_usual_one_is_chosen_by_some_leases_and_holds_at_others() {
        List<PumpTrial> judged = trials(TO_JUDGE);
        if (System.getProperty(ASKED) != null) {
            List<PumpTrial> known = trials(TO_CHOOSE);
            Unusual chosen = CANDIDATES.stream()
                    .filter(one -> falseCalls(known, one) <= MOST_FALSE)
                    .max(Comparator.<Unusual>comparingLong(one -> told(known, one))
                            .thenComparingDouble(Unusual::least)
                            .thenComparingDouble(Unusual::deviations))
                    .orElseThrow();
            System.out.println(table(known, judged));
            assertThat(chosen).isEqualTo(Unusual.USUAL);
        }

        assertThat(falseCalls(judged, Unusual.USUAL)).isLessThanOrEqualTo(2);
        assertThat(told(judged, Unusual.USUAL)).isGreaterThanOrEqualTo(9 * 2 * LEASES / 10);
    }

    private static List<PumpTrial> trials(long first) {
        return LongStream.range(first, first + LEASES)
                .parallel()
                .mapToObj(seed -> PumpTrial.of(seed, QUIET, CANDIDATES))
                .toList();
    }

    /** Of the faults that only the pump's share of the day shows. */
    private static long told(List<PumpTrial> trials, Unusual unusual) {
        return told(trials, unusual, Fault.TUBING_LEAK) + told(trials, unusual, Fault.WELL_OFF);
    }

    private static long told(List<PumpTrial> trials, Unusual unusual, Fault fault) {
        return trials.stream()
                .filter(trial -> trial.told().get(fault).contains(unusual))
                .count();
    }

    /** A year of one lease. */
    private static double falseCalls(List<PumpTrial> trials, Unusual unusual) {
        int all = trials.stream()
                .mapToInt(trial -> trial.falseCalls().getOrDefault(unusual, 0))
                .sum();
        return all * 365.0 / QUIET / trials.size();
    }

    private static String table(List<PumpTrial> known, List<PumpTrial> judged) {
        var rows = new StringBuilder(
                "| least, deviations | chosen by: tubing leak | well off | for nothing | judged by: tubing leak | well off | for nothing |\n"
                        + "| --- | --- | --- | --- | --- | --- | --- |\n");
        for (Unusual one : CANDIDATES) {
            rows.append("| %s, %.0f%s%s |%n"
                    .formatted(one.least(), one.deviations(), cells(known, one), cells(judged, one)));
        }
        return rows.toString();
    }

    private static String cells(List<PumpTrial> trials, Unusual unusual) {
        return String.format(
                Locale.ROOT,
                " | %d of %d | %d of %d | %.2f",
                told(trials, unusual, Fault.TUBING_LEAK),
                trials.size(),
                told(trials, unusual, Fault.WELL_OFF),
                trials.size(),
                falseCalls(trials, unusual));
    }
}
