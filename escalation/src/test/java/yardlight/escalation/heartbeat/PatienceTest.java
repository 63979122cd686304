package yardlight.escalation.heartbeat;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PatienceTest {

    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final Duration TEN_MINUTES = Duration.ofMinutes(10);
    private static final Duration GRACE = Duration.ofMinutes(2);
    private static final Duration FIRST = Duration.ofMinutes(3);
    private static final Patience LEARNED = new Patience(MINUTE, GRACE, true);

    @Test
    void that_is_set_up_is_the_interval_and_the_grace_whatever_arrives() {
        var box = new Played(new Patience(MINUTE, GRACE, false));

        box.beats(50, Duration.ofSeconds(20)).beats(50, Duration.ofSeconds(170));

        assertThat(box.patience()).isEqualTo(FIRST);
        assertThat(box.arrivals()).isEqualTo(Arrivals.NONE);
        assertThat(box.alarms()).isZero();
    }

    @Test
    void is_the_interval_and_the_grace_until_enough_was_heard() {
        var box = new Played(LEARNED);

        for (int heard = 0; heard < 8; heard++) {
            assertThat(box.patience()).isEqualTo(FIRST);
            box.beat(MINUTE);
        }
    }

    @Test
    void grows_at_first_and_comes_down_with_each_heartbeat_that_is_not_lost() {
        var box = new Played(LEARNED).beats(20, MINUTE);
        assertThat(box.patience()).isBetween(Duration.ofMinutes(10), Duration.ofMinutes(15));

        assertThat(box.beats(80, MINUTE).patience()).isBetween(Duration.ofMinutes(6), Duration.ofMinutes(8));
        assertThat(box.beats(600, MINUTE).patience()).isBetween(Duration.ofSeconds(181), Duration.ofSeconds(200));

        Duration before = box.patience();
        for (int i = 0; i < 3_000; i++) {
            Duration after = box.beat(MINUTE).patience();
            assertThat(after).isLessThanOrEqualTo(before.plusSeconds(1));
            before = after;
        }

        assertThat(before).isBetween(Duration.ofSeconds(121), Duration.ofSeconds(135));
    }

    @Test
    void is_never_less_than_two_intervals() {
        var box = new Played(LEARNED).beats(100_000, MINUTE);

        assertThat(box.patience()).isGreaterThan(GRACE);
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 10, 29, 31, 60, 3_000})
    void learns_nothing_from_an_outage(int minutes) {
        var well = new Played(LEARNED).beats(3_000, MINUTE);
        var box = new Played(LEARNED).beats(3_000, MINUTE);

        for (int outage = 0; outage < 20; outage++) {
            box.running(Duration.ofMinutes(minutes), Duration.ofSeconds(5)).beats(50, MINUTE);
        }

        assertThat(box.alarms()).isEqualTo(20);
        assertThat(box.patience()).isLessThanOrEqualTo(well.patience());
        assertThat(box.arrivals().losses().lost()).isZero();
    }

    @Test
    void learns_nothing_from_a_gap_in_which_the_gateway_was_away() {
        var box = new Played(LEARNED).beats(3_000, MINUTE);
        Duration before = box.patience();

        box.beat(Duration.ofSeconds(30)).away(TEN_MINUTES).beat(Duration.ofSeconds(30));

        assertThat(box.alarms()).isZero();
        assertThat(box.arrivals().losses().lost()).isZero();
        assertThat(box.beats(10, MINUTE).patience()).isLessThanOrEqualTo(before);
    }

    @Test
    void learns_nothing_from_a_clock_that_was_set_back() {
        var box = new Played(LEARNED).beats(3_000, MINUTE);
        Duration before = box.patience();

        box.clockBack(Duration.ofHours(5)).beats(10, MINUTE);

        assertThat(box.alarms()).isZero();
        assertThat(box.patience()).isLessThanOrEqualTo(before);
    }

    @Test
    void takes_an_event_for_a_sign_of_life_and_not_for_a_heartbeat() {
        var box = new Played(LEARNED);
        for (int i = 0; i < 3_000; i++) {
            box.event(Duration.ofSeconds(13)).event(Duration.ofSeconds(1)).beat(Duration.ofSeconds(46));
        }

        assertThat(box.arrivals().pace().mean()).isEqualTo(60);
        assertThat(box.patience()).isBetween(GRACE, Duration.ofSeconds(135));
    }

    @Test
    void takes_heartbeats_that_are_sent_twice_or_come_in_a_bunch_for_one() {
        var box = new Played(LEARNED);
        for (int i = 0; i < 3_000; i++) {
            box.beat(Duration.ofSeconds(58)).beat(Duration.ofSeconds(1)).beat(Duration.ofSeconds(1));
        }

        assertThat(box.arrivals().pace().mean()).isEqualTo(60);
        assertThat(box.patience()).isBetween(GRACE, Duration.ofSeconds(135));
    }

    @Test
    void follows_a_box_from_ten_minutes_to_one_and_back() {
        var box = new Played(new Patience(TEN_MINUTES, GRACE, true)).beats(300, TEN_MINUTES);
        assertThat(box.arrivals().pace().mean()).isEqualTo(600);

        box.beats(200, MINUTE);
        assertThat(box.arrivals().pace().mean()).isBetween(59.0, 61.0);
        assertThat(box.beats(3_000, MINUTE).patience()).isBetween(TEN_MINUTES, Duration.ofMinutes(11));

        box.beats(40, TEN_MINUTES);
        assertThat(box.arrivals().pace().mean()).isEqualTo(600);
        assertThat(box.alarms()).isZero();
    }

    /** Three outages, as far as anybody can tell, and then it is known. */
    @Test
    void follows_a_box_that_becomes_slower_than_it_is_asked_to_be() {
        var box = new Played(LEARNED).beats(3_000, MINUTE).beats(50, TEN_MINUTES);

        assertThat(box.alarms()).isEqualTo(3);
        assertThat(box.arrivals().pace().mean()).isEqualTo(600);

        box.beats(3_000, MINUTE);
        assertThat(box.arrivals().pace().mean()).isBetween(59.9, 60.1);
        assertThat(box.patience()).isBetween(GRACE, Duration.ofSeconds(135));
        assertThat(box.alarms()).isEqualTo(3);
    }

    /** A false alarm tells what cannot be learned from the gaps: all that are longer than thought end in one. */
    @Test
    void becomes_longer_with_an_alarm_that_was_wrong() {
        var box = new Played(LEARNED).beats(3_000, MINUTE);
        Duration before = box.patience();

        box.beat(FIRST).beat(MINUTE).beat(MINUTE);

        assertThat(box.alarms()).isEqualTo(1);
        assertThat(box.patience()).isGreaterThan(before.plus(MINUTE));
    }

    @Test
    void becomes_longer_when_the_box_says_that_it_ran_through_and_not_when_it_started_anew() {
        var ran = new Played(LEARNED).beats(3_000, MINUTE);
        var restarted = new Played(LEARNED).beats(3_000, MINUTE);
        Duration before = ran.patience();

        ran.running(Duration.ofSeconds(240), Duration.ofDays(3)).beats(2, MINUTE);
        restarted.running(Duration.ofSeconds(240), Duration.ofSeconds(40)).beats(2, MINUTE);

        assertThat(ran.patience()).isGreaterThan(before.plus(MINUTE));
        assertThat(restarted.patience()).isLessThanOrEqualTo(before);
    }

    @Test
    void grows_with_a_link_that_gets_worse_at_the_price_of_a_few_alarms() {
        int alarms = 0;
        for (int seed = 0; seed < 10; seed++) {
            var random = new Random(seed);
            var box = new Played(LEARNED).beats(5_000, MINUTE);
            for (int i = 0; i < 3_000; i++) {
                int lost = 0;
                while (random.nextDouble() < 0.2) {
                    lost++;
                }
                box.beat(MINUTE.multipliedBy(lost + 1));
            }
            alarms += box.alarms();
            assertThat(box.patience()).isBetween(Duration.ofMinutes(8), Duration.ofMinutes(20));
        }
        assertThat(alarms).isBetween(1, 20);
    }

    @Test
    void ends_after_thirty_intervals_however_bad_the_link() {
        var box = new Played(LEARNED);
        for (int i = 0; i < 3_000; i++) {
            box.beat(MINUTE.multipliedBy(1 + i % 25));
        }

        assertThat(box.patience()).isEqualTo(Duration.ofMinutes(30));
    }

    @Test
    void is_never_less_than_ten_seconds() {
        var box = new Played(new Patience(Duration.ofSeconds(1), Duration.ofSeconds(1), true));

        assertThat(box.patience()).isEqualTo(Duration.ofSeconds(10));
        assertThat(box.beats(3_000, Duration.ofSeconds(1)).patience()).isEqualTo(Duration.ofSeconds(10));
    }
}
