package yardlight.gateway.lane;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;
import yardlight.gateway.clock.Leap;

class HearingTest {

    private static final Instant START = Fixtures.at("2026-11-25T01:00");

    private Instant now = START;
    private Leap leap = Leap.NEVER;
    private final Hearing hearing = new Hearing(() -> now, () -> leap.last());

    /** What the database says of it. */
    private Optional<Instant> last = Optional.empty();

    private Optional<Instant> known = Optional.empty();

    @Test
    void begins_at_a_start_after_a_while_without_a_gateway() {
        last = Optional.of(START.minus(Hearing.BREAK));

        store();

        assertThat(known).contains(START);
    }

    @Test
    void goes_on_across_a_quick_restart() {
        last = Optional.of(START.minus(Hearing.BREAK).plusMillis(1));

        store();

        assertThat(known).isEmpty();
        assertThat(hearing.since(known)).isEqualTo(Instant.EPOCH);
        assertThat(hearing.started()).isEqualTo(START);
    }

    @Test
    void knows_after_a_quick_restart_of_the_break_before_it() {
        last = Optional.of(START.minusSeconds(2));
        known = Optional.of(START.minusSeconds(5));

        store();

        assertThat(hearing.since(known)).isEqualTo(START.minusSeconds(5));
    }

    @Test
    void has_had_no_break_in_a_new_database() {
        store();

        assertThat(known).isEmpty();
    }

    @Test
    void has_had_no_break_after_a_clock_that_was_ahead() {
        last = Optional.of(START.plusSeconds(600));

        store();

        assertThat(known).isEmpty();
    }

    /** Or no box would be missed before that year. */
    @Test
    void a_break_that_ends_in_another_year_has_ended_now() {
        known = Optional.of(Fixtures.at("2036-11-25T01:00"));
        store();
        now = START.plusSeconds(60);
        store();

        assertThat(known).contains(START);
    }

    @Test
    void that_nothing_was_there_to_be_stored_is_no_break() {
        store();
        now = now.plus(Duration.ofHours(5));
        store();

        assertThat(known).isEmpty();
    }

    @Test
    void begins_anew_when_things_are_stored_again() {
        store();
        now = START.plusSeconds(100);
        hearing.lose();
        now = now.plusSeconds(20);
        hearing.lose();
        now = now.plusSeconds(20);
        store();
        now = now.plusSeconds(20);
        store();

        assertThat(known).contains(START.plusSeconds(140));
    }

    @Test
    void a_start_without_a_database_goes_on_until_there_is_one() {
        last = Optional.of(START.minusSeconds(20));
        hearing.lose();
        now = now.plusSeconds(20);

        store();

        assertThat(known).contains(START.plusSeconds(20));
    }

    @Test
    void what_is_not_stored_ends_nothing() {
        store();
        hearing.lose();
        now = now.plusSeconds(40);
        assertThat(hearing.back(last, known, now)).contains(now);
        hearing.lose();
        now = now.plusSeconds(40);
        store();

        assertThat(known).contains(START.plusSeconds(80));
    }

    @Test
    void goes_on_when_that_was_a_moment() {
        store();
        hearing.lose();
        now = now.plusSeconds(5);
        store();
        now = now.plus(Duration.ofHours(1));
        hearing.lose();
        now = now.plusSeconds(5);
        store();

        assertThat(known).isEmpty();
    }

    @Test
    void goes_on_when_another_gateway_stored_all_along() {
        store();
        hearing.lose();
        now = now.plusSeconds(600);
        last = Optional.of(now.minusSeconds(3));
        store();

        assertThat(known).isEmpty();
    }

    @Test
    void goes_by_the_other_gateway_that_came_back_a_moment_before() {
        store();
        hearing.lose();
        now = now.plusSeconds(600);
        known = Optional.of(now.minusSeconds(1));
        last = known;
        store();

        assertThat(hearing.since(known)).isEqualTo(now.minusSeconds(1));
    }

    @Test
    void begins_at_the_last_of_all_breaks_and_keeps_a_leap_of_its_clock_to_itself() {
        known = Optional.of(START.minusSeconds(60));
        leap = () -> Optional.of(START.plusSeconds(50));
        store();
        assertThat(known).contains(START.minusSeconds(60));
        assertThat(hearing.since(known)).isEqualTo(START.plusSeconds(50));

        now = START.plusSeconds(60);
        hearing.lose();
        now = START.plusSeconds(120);
        store();
        assertThat(hearing.since(known)).isEqualTo(START.plusSeconds(120));
    }

    private void store() {
        Optional<Instant> back = hearing.back(last, known, now);
        hearing.stored(known, back);
        known = back;
        last = Optional.of(now);
    }
}
