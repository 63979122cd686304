package yardlight.demo.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yardlight.demo.lease.Fault;
import yardlight.demo.lease.LeaseDesign;

/**
 * What is found out about a lease before it runs over, beside a plain switch at the top of its tank, and how often people are
 * called for nothing. The results of a larger run are in docs/lease-study.md.
 */
class LeaseStudyTest {

    private static final String ASKED = "yardlight.study.leases";

    private static final long LEASES = Long.getLong(ASKED, 1);

    /** With nothing asked for, only what shows within hours. */
    private static final List<Fault> FAULTS = System.getProperty(ASKED) != null
            ? List.of(Fault.values())
            : List.of(Fault.POWER, Fault.BELT, Fault.FUSE, Fault.FLOW_LINE_HOLE, Fault.INJECTION_LEAK);

    private static final int QUIET = Integer.getInteger("yardlight.study.quiet-days", 10);
    private static final Duration EVERY = Duration.ofMinutes(Integer.getInteger("yardlight.study.quiet-every", 5));

    /** Ana answers after ten minutes; what shows at two points is two texts. */
    private static final int UNTIL_ANSWERED = 2;

    /** The first, and each time that it became worse. */
    private static final int WITHIN_HOURS = 6;

    /** Inches of rain: nobody has to be called for that, and the pump takes it away. */
    private static final Fault HARMLESS = Fault.RAIN;

    @Test
    void every_fault_is_told_and_whatever_makes_the_tank_run_over_well_before_the_plain_switch_trips() {
        List<Trial> trials = LongStream.rangeClosed(1, LEASES)
                .parallel()
                .boxed()
                .flatMap(LeaseStudyTest::trials)
                .toList();

        System.out.println(StudyTable.of(trials));
        System.out.println(StudyTable.texts(trials));
        assertThat(which(
                        trials,
                        trial -> trial.fault() != HARMLESS && trial.detected().isEmpty()))
                .as("not told")
                .isEmpty();
        assertThat(which(trials, LeaseStudyTest::late))
                .as("told late or not at all before it ran over")
                .isEmpty();
        assertThat(which(trials, trial -> trial.untilAnswered() > UNTIL_ANSWERED))
                .as("more texts than one cause is worth until somebody answers")
                .isEmpty();
        assertThat(which(trials, trial -> trial.calls().size() > WITHIN_HOURS))
                .as("more texts than one cause is worth within twelve hours")
                .isEmpty();
    }

    /** Less than twice the time is left that the plain switch leaves. */
    private static boolean late(Trial trial) {
        Duration left = trial.left().orElse(Duration.ZERO);
        Duration bySwitch = trial.leftBySwitch().orElse(Duration.ZERO);
        return trial.overflowed().isPresent() && left.compareTo(bySwitch.multipliedBy(2)) < 0;
    }

    private static List<String> which(List<Trial> trials, Predicate<Trial> what) {
        return trials.stream()
                .filter(what)
                .map(trial -> trial.fault().words() + ", lease " + trial.seed())
                .toList();
    }

    private static Stream<Trial> trials(long seed) {
        WatchedLease known = Trial.known(seed);
        return FAULTS.stream().map(fault -> Trial.of(fault, seed, known));
    }

    @Test
    void a_lease_that_is_well_calls_nobody_more_than_twice_a_year() {
        Map<Long, List<Heard>> heard = LongStream.rangeClosed(1, LEASES)
                .parallel()
                .boxed()
                .collect(Collectors.toConcurrentMap(Function.identity(), LeaseStudyTest::quiet));

        new TreeMap<>(heard)
                .forEach((seed, texts) -> System.out.printf(
                        "lease %d, %d days without a fault: %d called%n%s", seed, QUIET, texts.size(), listed(texts)));
        double most = Math.max(1, 2 * QUIET / 365.0);
        assertThat(heard.values()).allSatisfy(texts -> assertThat(texts).hasSizeLessThanOrEqualTo((int) most));
    }

    private static List<Heard> quiet(long seed) {
        var watched = new WatchedLease(LeaseDesign.drawn(seed), seed);
        watched.post(EVERY);
        watched.step(Duration.ofDays(QUIET));
        return watched.heard();
    }

    private static String listed(List<Heard> texts) {
        return texts.stream()
                .map(text -> "    day " + text.at().toDays() + " " + text.first() + ": " + text.words() + "\n")
                .collect(Collectors.joining());
    }
}
