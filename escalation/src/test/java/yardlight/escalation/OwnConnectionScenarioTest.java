package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.escalation.setup.Setup;

/** Nothing arrives and nothing goes out: then it is the gateway, and not forty sites. */
class OwnConnectionScenarioTest {

    private final Silent night = new Silent();

    @BeforeEach
    void threeSites() {
        night.box("loma-4-box", "loma-4", "", "", false)
                .box("pico-2-box", "pico-2", "", "", false)
                .box("rio-7-box", "rio-7", "", "", false)
                .minutes(5);
    }

    @Test
    void no_site_is_silent_while_the_gateway_is_cut_off() {
        carriers(true);
        night.quiet("loma-4-box", "pico-2-box", "rio-7-box").minutes(10);

        assertThat(night.alarm("loma-4").active()).isFalse();
        assertThat(night.alarm("pico-2").active()).isFalse();
        assertThat(night.play().picture.alarm(Setup.carrier("outside")).active())
                .isTrue();
        assertThat(night.play().log).anyMatch(line -> line.contains("outside/down"));
    }

    @Test
    void it_is_over_with_the_first_sign_of_life_and_boxes_get_their_patience_anew() {
        carriers(true);
        night.quiet("loma-4-box", "pico-2-box", "rio-7-box")
                .minutes(10)
                .back("loma-4-box", "pico-2-box")
                .minutes(1);
        carriers(false);

        assertThat(night.play().picture.alarm(Setup.carrier("outside")).reported())
                .isFalse();

        night.minutes(4);

        assertThat(night.alarm("rio-7").active()).isTrue();
    }

    @Test
    void sites_are_silent_as_long_as_something_goes_out() {
        night.quiet("loma-4-box", "pico-2-box", "rio-7-box").minutes(10);

        assertThat(night.alarm("loma-4").active()).isTrue();
    }

    private void carriers(boolean down) {
        night.now(new Stimulus.Carrier("sms-mail", down, "no route"));
        night.now(new Stimulus.Carrier("mail", down, "no route"));
    }
}
