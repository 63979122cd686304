package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.escalation.ladder.Callout;

/** A box that was heard is missed also if it was out of the setup for a while: it may have died meanwhile, or before. */
class BoxPutBackScenarioTest {

    private final Silent night = new Silent();

    @BeforeEach
    void twoSites() {
        loma("loma-4");
        night.box("pico-2-box", "pico-2", "mains", "", true).minutes(5);
    }

    @Test
    void is_missed_again_when_its_site_was_deleted_by_mistake_while_it_was_silent() {
        night.quiet("loma-4-box").minutes(5).without("loma-4").minutes(1);
        assertThat(live()).isEmpty();

        loma("loma-4");
        night.edited().minutes(5);

        assertThat(night.alarm("loma-4").active()).isTrue();
        assertThat(live()).hasSize(1);
    }

    @Test
    void is_missed_when_it_died_at_the_time_at_which_it_was_out_of_the_setup() {
        night.quiet("loma-4-box").remove("loma-4-box").edited().minutes(1);
        loma("loma-4");
        night.edited().minutes(3);

        assertThat(night.alarm("loma-4").active()).isTrue();
        assertThat(live()).hasSize(1);
    }

    @Test
    void is_missed_at_the_site_to_which_it_was_moved_although_it_was_silent_before() {
        night.quiet("loma-4-box").minutes(5).remove("loma-4-box");
        loma("pico-2");
        night.edited().minutes(5);

        assertThat(night.alarm("loma-4").active()).isFalse();
        assertThat(night.alarm("pico-2").active()).isTrue();
        assertThat(live()).anyMatch(callout -> callout.facts().site().equals("pico-2"));
    }

    @Test
    void is_missed_when_its_site_is_given_another_id_as_it_dies() {
        night.quiet("loma-4-box").without("loma-4");
        loma("loma-5");
        night.edited().minutes(4);

        assertThat(night.alarm("loma-5").active()).isTrue();
    }

    @Test
    void has_its_patience_from_then_on_when_its_time_has_passed() {
        night.remove("loma-4-box").edited().quiet("loma-4-box").minutes(60);
        loma("loma-4");
        night.edited().minutes(2);
        assertThat(night.alarm("loma-4").active()).isFalse();

        night.minutes(2);
        assertThat(night.alarm("loma-4").active()).isTrue();
    }

    @Test
    void is_no_alarm_when_it_is_heard() {
        night.remove("loma-4-box").edited().minutes(10);
        loma("loma-4");
        night.edited().minutes(10);

        assertThat(night.texts()).isEmpty();
    }

    @Test
    void is_not_missed_when_it_was_never_heard() {
        night.box("rio-7-box", "rio-7", "plant", "", true)
                .quiet("rio-7-box")
                .edited()
                .minutes(10);
        night.remove("rio-7-box").edited().minutes(1);
        night.box("rio-7-box", "rio-7", "plant", "", true).edited().minutes(10);

        assertThat(night.alarm("rio-7").active()).isFalse();
        assertThat(night.texts()).isEmpty();
    }

    private void loma(String site) {
        night.box("loma-4-box", site, "wells", "", true);
    }

    private List<Callout> live() {
        return night.play().picture.callouts().stream().filter(Callout::live).toList();
    }
}
