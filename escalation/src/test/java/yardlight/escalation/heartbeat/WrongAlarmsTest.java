package yardlight.escalation.heartbeat;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How often a box that is well is taken for silent, and how soon one that is not: in the first year of each of a thousand boxes. */
class WrongAlarmsTest {

    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final Patience LEARNED = new Patience(MINUTE, MINUTE.multipliedBy(2), true);
    private static final Patience FIXED = new Patience(MINUTE, MINUTE.multipliedBy(2), false);
    private static final Patience THREE_MISSES = new Patience(MINUTE, Duration.ofSeconds(150), false);
    private static final int HEARTBEATS = 2_000;

    /** Beside what is set up, and a plain rule: so many misses, and half an interval for lateness. */
    @ParameterizedTest
    @CsvSource({"0.00, 160", "0.001, 170", "0.01, 240", "0.05, 330", "0.10, 400", "0.20, 540", "0.30, 720"})
    void come_no_more_than_once_a_year_and_outages_are_found_as_soon_as_the_link_lets(double loss, double soon) {
        var link = new Link(loss, 60, 0.3, 0.8);

        Link.Outcome learned = show(loss, "learned", link.play(LEARNED, loss == 0.2 ? 1_000 : 120, HEARTBEATS, 1));
        show(loss, "every + grace", link.play(FIXED, 20, HEARTBEATS, 1));
        show(loss, "three misses", link.play(THREE_MISSES, 20, HEARTBEATS, 1));

        assertThat(learned.first()).isLessThan(1);
        assertThat(learned.settled()).isLessThan(0.75);
        assertThat(learned.detection()).isLessThan(soon);
    }

    /** A latency of 2 s, of 20 s once in 36 and of a minute once in 430. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.02, 0.2})
    void come_no_more_than_once_a_year_with_the_long_tail_of_a_bad_cellular_link(double loss) {
        Link.Outcome learned = new Link(loss, 60, 2, 1.2).play(LEARNED, 60, HEARTBEATS, 3);

        assertThat(show(loss, "late", learned).first()).isLessThan(1);
    }

    /** What gets lost is not independent there: each loss is followed by another one half of the time. */
    @ParameterizedTest
    @CsvSource({"0.01, 15", "0.05, 2"})
    void stay_few_on_a_link_that_loses_several_in_a_row(double begins, double few) {
        Link.Outcome learned = new Link(begins, 0.5, 60, 0.3, 0.8).play(LEARNED, 120, HEARTBEATS, 4);

        assertThat(show(begins, "in rows", learned).first()).isLessThan(few);
    }

    private static Link.Outcome show(double loss, String what, Link.Outcome one) {
        System.out.printf(
                Locale.ROOT,
                "loss %4.1f %%, %-13s: %9.2f wrong alarms a year, %9.2f in the first, an outage is found after %.0f s%n",
                loss * 100,
                what,
                one.settled(),
                one.first(),
                one.detection());
        return one;
    }
}
