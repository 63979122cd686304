package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.heartbeat.Heartbeat;

/** A pump that runs less than usual because it does not run at all. */
class StandstillScenarioTest {

    private static final Duration WEEK = Duration.ofDays(7);

    private final SmallLease lease = new SmallLease(1);

    private String toldOfThePump() {
        for (int minute = 0; minute < 3 * 1440; minute++) {
            lease.play(Duration.ofMinutes(1));
            Optional<String> text = lease.texts().stream()
                    .filter(one -> one.contains("INJECTION PUMP RUNS LESS"))
                    .findFirst();
            if (text.isPresent()) {
                return text.get();
            }
        }
        throw new AssertionError("told nothing of the pump: " + lease.texts());
    }

    @Test
    void with_the_level_up_it_should_run() {
        lease.play(WEEK).playToTheBottom();
        lease.startsAt14 = false;

        assertThat(toldOfThePump()).contains(". It stands and the level is up: tripped, off or no power. Reply OK ");
    }

    @Test
    void with_a_level_that_does_not_rise_hardly_anything_comes_in() {
        lease.play(WEEK).playToTheBottom();
        lease.inflow = 0;

        assertThat(toldOfThePump())
                .contains(". It stands and the level does not rise: hardly anything comes in. Reply OK ");
    }

    @Test
    void without_power_that_is_why() {
        lease.play(WEEK).playToTheBottom();
        lease.startsAt14 = false;
        lease.night.at(
                SmallLease.START.plus(Duration.ofMinutes(lease.minute())),
                new Stimulus.Beat(
                        "mesa-9-box",
                        new Heartbeat(
                                Optional.empty(),
                                Map.of("pump", false),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty())));

        assertThat(toldOfThePump()).contains(". It stands: its power is off. Reply OK ");
    }

    @Test
    void with_a_level_that_nobody_reads_it_may_be_anything() {
        lease.gauged = false;
        lease.play(WEEK).playToTheBottom();
        lease.startsAt14 = false;

        assertThat(toldOfThePump()).contains(". It stands for long: off, tripped or nothing to pump. Reply OK ");
    }

    @Test
    void a_pump_that_rests_between_two_runs_does_not_stand() {
        lease.play(WEEK).playToTheBottom().play(Duration.ofMinutes(20));

        Instant now = SmallLease.START.plus(Duration.ofMinutes(lease.minute()));
        var draft = new Draft(lease.night.picture(), now);
        assertThat(new Standstill(draft).of(draft.setup().point("mesa-9", "injection-pump")))
                .isEmpty();
    }

    @Test
    void a_pump_that_still_comes_on_is_one_to_which_less_comes() {
        lease.play(WEEK).playToTheBottom();
        lease.inflow = 7;

        assertThat(toldOfThePump()).contains(". Less fluid may come in: a well off or a leak. Reply OK ");
    }
}
