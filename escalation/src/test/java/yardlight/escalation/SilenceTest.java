package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.at;
import static yardlight.escalation.Fixtures.theSetup;

import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.wording.Links;

/** A machine that slept for ten hours, or whose clock was set forward by as much, and the boxes that could not post. */
class SilenceTest {

    private static final String BOX = "mesa-9-box";
    private static final Instant WAKES = at("2026-11-25T12:00");

    private final Escalator escalator = new Escalator(Links.NONE, () -> 47);
    private final Picture picture = new Picture(theSetup());

    @BeforeEach
    void beat() {
        decide(new Stimulus.Beat(BOX, Heartbeat.BARE), at("2026-11-25T02:00"));
    }

    @Test
    void is_not_that_of_a_box_that_could_not_post() {
        decide(new Stimulus.BoxDue(BOX, WAKES), WAKES);

        assertThat(watch().silent()).isFalse();
        assertThat(watch().deadline()).contains(WAKES.plusSeconds(180));
        assertThat(picture.callouts()).isEmpty();
    }

    @Test
    void is_an_alarm_when_the_box_does_not_post_after_that_either() {
        decide(new Stimulus.BoxDue(BOX, WAKES), WAKES);
        decide(new Stimulus.BoxDue(BOX, WAKES), WAKES.plusSeconds(180));

        assertThat(watch().silent()).isTrue();
        assertThat(picture.callouts()).hasSize(1);
    }

    /** Each time its time would be over, the gateway has just come back again: that counts once. */
    @Test
    void is_an_alarm_though_nobody_could_post_again_and_again() {
        decide(new Stimulus.BoxDue(BOX, WAKES), WAKES);
        decide(new Stimulus.BoxDue(BOX, WAKES.plusSeconds(170)), WAKES.plusSeconds(180));

        assertThat(watch().silent()).isTrue();
    }

    @Test
    void begins_anew_after_each_sign_of_life() {
        decide(new Stimulus.BoxDue(BOX, WAKES), WAKES);
        decide(new Stimulus.Beat(BOX, Heartbeat.BARE), WAKES.plusSeconds(30));
        decide(new Stimulus.BoxDue(BOX, WAKES.plusSeconds(600)), WAKES.plusSeconds(600));

        assertThat(watch().silent()).isFalse();
        assertThat(watch().deadline()).contains(WAKES.plusSeconds(780));
    }

    @Test
    void is_an_alarm_at_once_when_the_box_could_post_all_the_time() {
        decide(new Stimulus.BoxDue(BOX), WAKES);

        assertThat(watch().silent()).isTrue();
    }

    private BoxWatch watch() {
        return picture.box(BOX).orElseThrow();
    }

    private void decide(Stimulus stimulus, Instant now) {
        picture.apply(escalator.decide(picture, stimulus, now).changes());
    }
}
