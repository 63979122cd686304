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

    @Test
    void begins_at_a_start_after_a_while_without_a_gateway() {
        hearing.begin(Optional.of(START.minus(Hearing.BREAK)));

        assertThat(hearing.since()).isEqualTo(START);
    }

    @Test
    void goes_on_across_a_quick_restart_and_yet_nothing_is_learned_across_it() {
        hearing.begin(Optional.of(START.minus(Hearing.BREAK).plusMillis(1)));

        assertThat(hearing.since()).isEqualTo(Instant.EPOCH);
        assertThat(hearing.unbroken()).isEqualTo(START);
    }

    @Test
    void has_had_no_break_in_a_new_database_or_after_a_clock_that_was_ahead() {
        hearing.begin(Optional.empty());
        assertThat(hearing.since()).isEqualTo(Instant.EPOCH);

        hearing.begin(Optional.of(START.plusSeconds(600)));
        assertThat(hearing.since()).isEqualTo(Instant.EPOCH);
    }

    @Test
    void begins_anew_when_things_are_stored_again() {
        now = START.plusSeconds(100);
        hearing.lose();
        now = now.plusSeconds(20);
        hearing.lose();
        now = now.plusSeconds(20);
        hearing.regain();

        assertThat(hearing.since()).isEqualTo(START.plusSeconds(140)).isEqualTo(hearing.unbroken());
    }

    @Test
    void goes_on_when_that_was_a_moment() {
        hearing.lose();
        now = now.plusSeconds(5);
        hearing.regain();
        now = now.plus(Duration.ofHours(1));
        hearing.lose();
        now = now.plusSeconds(5);
        hearing.regain();

        assertThat(hearing.since()).isEqualTo(Instant.EPOCH);
    }

    @Test
    void begins_at_the_last_of_all_breaks() {
        hearing.begin(Optional.of(START.minusSeconds(3600)));
        leap = () -> Optional.of(START.plusSeconds(50));
        assertThat(hearing.since()).isEqualTo(START.plusSeconds(50));

        now = START.plusSeconds(60);
        hearing.lose();
        now = START.plusSeconds(120);
        hearing.regain();
        assertThat(hearing.since()).isEqualTo(START.plusSeconds(120));
    }
}
