package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.at;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.heartbeat.Arrivals;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;

/** A box whose deadline is learned, from its first heartbeat to its silence and back. */
class LearnedDeadlineTest {

    private static final String BOX = "mesa-9-box";
    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final Escalator escalator = new Escalator(Links.NONE, () -> 47);
    private final Picture picture = new Picture(setup(true, MINUTE));
    private Instant now = at("2026-11-20T02:00");

    @Test
    void comes_after_what_the_setup_says_until_enough_was_heard() {
        beats(3);

        assertThat(watch().deadline()).contains(now.plusSeconds(180));
    }

    @Test
    void comes_a_little_after_two_missed_heartbeats_once_none_was_lost_for_two_days() {
        beats(3_000);

        assertThat(patience()).isBetween(Duration.ofSeconds(121), Duration.ofSeconds(135));
    }

    @Test
    void is_kept_from_an_outage_that_an_event_ends() {
        beats(3_000);
        Arrivals before = watch().arrivals();
        silent();

        now = now.plus(Duration.ofMinutes(30));
        decide(new Stimulus.Reported(BOX, List.of()));
        assertThat(watch().silent()).isFalse();
        beats(3);

        assertThat(watch().arrivals().losses().lost()).isEqualTo(before.losses().lost());
        assertThat(patience()).isBetween(Duration.ofSeconds(121), Duration.ofSeconds(135));
    }

    @Test
    void is_kept_from_the_time_in_which_the_gateway_was_down() {
        beats(3_000);
        now = now.plusSeconds(118);
        decide(new Stimulus.Beat(BOX, Heartbeat.BARE, now.minusSeconds(20)));

        assertThat(watch().arrivals().losses().lost()).isZero();
        assertThat(watch().arrivals().since()).contains(now);
    }

    @Test
    void is_as_the_setup_says_as_soon_as_it_says_so() {
        beats(3_000);

        change(setup(false, MINUTE));

        assertThat(patience()).isEqualTo(Duration.ofMinutes(3));
        assertThat(watch().arrivals()).isEqualTo(Arrivals.NONE);
    }

    @Test
    void is_learned_anew_when_another_interval_is_asked_for() {
        beats(3_000);

        change(setup(true, Duration.ofMinutes(5)));

        assertThat(patience()).isEqualTo(Duration.ofMinutes(7));
    }

    @Test
    void stays_learned_when_something_else_of_the_setup_changes() {
        beats(3_000);
        Arrivals before = watch().arrivals();
        Setup setup = setup(true, MINUTE);
        Box other = setup.boxes().get(BOX);
        var link = new Box(
                BOX, other.site(), other.feed(), Optional.of("tower"), true, other.every(), other.grace(), true);

        change(with(link));

        assertThat(watch().arrivals()).isEqualTo(before);
    }

    private void beats(int times) {
        for (int i = 0; i < times; i++) {
            now = now.plus(MINUTE);
            decide(new Stimulus.Beat(BOX, Heartbeat.BARE));
        }
    }

    private void silent() {
        now = watch().deadline().orElseThrow();
        decide(new Stimulus.BoxDue(BOX));
        assertThat(watch().silent()).isTrue();
        assertThat(picture.callouts()).hasSize(1);
    }

    private void change(Setup next) {
        var changed = new Stimulus.SetupChanged(next, "owner");
        Decision decision = escalator.decide(picture, changed, now);
        picture.setup(next);
        picture.apply(decision.changes());
    }

    private Duration patience() {
        return Duration.between(watch().heardAt(), watch().deadline().orElseThrow());
    }

    private BoxWatch watch() {
        return picture.box(BOX).orElseThrow();
    }

    private void decide(Stimulus stimulus) {
        picture.apply(escalator.decide(picture, stimulus, now).changes());
    }

    private static Setup setup(boolean learned, Duration every) {
        Box box = Fixtures.aBox();
        return with(new Box(
                BOX, box.site(), box.feed(), box.link(), true, Optional.of(every), Duration.ofMinutes(2), learned));
    }

    private static Setup with(Box box) {
        return new Setup(
                List.of(Fixtures.aSite()),
                List.of(box),
                List.of(Fixtures.waterTank(), Fixtures.injectionPump()),
                List.of(Fixtures.ana(), Fixtures.ben()),
                List.of(Fixtures.crew()),
                List.of(Fixtures.night()));
    }
}
