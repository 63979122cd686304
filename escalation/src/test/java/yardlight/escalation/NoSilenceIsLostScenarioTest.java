package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.heartbeat.Path;

/** Silences that come one after the other, or end in an odd way: somebody is told of each, and each ends. */
class NoSilenceIsLostScenarioTest {

    private final Silent night = new Silent();

    @Test
    void of_other_sites_while_somebody_works_on_the_box_that_is_missed_first() {
        night.outOfService("loma-4");
        link();
        night.quiet("loma-4-box", "pico-2-box", "rio-7-box").minutes(5);

        assertThat(night.alarm("loma-4").state()).isEqualTo(AlarmState.OUT_OF_SERVICE);
        assertThat(night.play().picture.callouts())
                .singleElement()
                .matches(callout -> !callout.facts().site().equals("loma-4"));
    }

    @Test
    void of_another_box_at_the_site_of_one_that_went_with_its_feed() {
        night.box("loma-4-box", "loma-4", "wells", "", false)
                .box("loma-4-pump", "loma-4", "pump", "", false)
                .says("loma-4-box", Map.of("wells", true))
                .minutes(5);
        night.says("loma-4-box", Map.of("wells", false))
                .minutes(1)
                .quiet("loma-4-box")
                .minutes(4);
        assertThat(night.alarm("loma-4").state()).isEqualTo(AlarmState.SUPPRESSED_BY_DESIGN);

        night.quiet("loma-4-pump").minutes(4);

        assertThat(night.alarm("loma-4").state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }

    @Test
    void of_the_same_link_an_hour_after_somebody_answered_while_one_box_stays_silent() {
        link();
        night.quiet("loma-4-box", "pico-2-box", "rio-7-box").minutes(5);
        night.now(new Stimulus.Acknowledge(night.link("loma-4", "hub").key(), "ana", "page", Optional.empty()));
        night.back("loma-4-box", "pico-2-box").minutes(60);
        night.quiet("loma-4-box", "pico-2-box").minutes(5);

        assertThat(night.link("loma-4", "hub").state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(night.play().picture.callouts()).hasSize(2);

        night.back("loma-4-box", "pico-2-box").minutes(2);
        assertThat(night.link("loma-4", "hub").active()).isTrue();

        night.back("rio-7-box").minutes(2);
        assertThat(night.link("loma-4", "hub").active()).isFalse();
    }

    @Test
    void of_boxes_on_a_feed_whose_name_is_none_of_a_point() {
        night.box("loma-4-box", "loma-4", "North line", "", false)
                .box("loma-4-pump", "loma-4", "North line", "", false)
                .minutes(5);
        night.quiet("loma-4-box", "loma-4-pump").minutes(4);

        assertThat(night.alarm("loma-4").condition()).isEqualTo("power-off");
        assertThat(night.texts()).hasSize(1);
    }

    @Test
    void of_a_box_that_does_not_start_although_another_one_says_that_its_feed_is_back() {
        night.box("loma-4-box", "loma-4", "wells", "", false)
                .box("loma-4-pump", "loma-4", "pump", "", true)
                .minutes(5);
        night.says("loma-4-box", Map.of("wells", false))
                .minutes(1)
                .quiet("loma-4-box")
                .minutes(4);
        night.says("loma-4-pump", Map.of("wells", true)).minutes(5);

        assertThat(night.play()
                        .picture
                        .alarm(BoxAlarms.feedOff("loma-4", "wells"))
                        .active())
                .isFalse();
        assertThat(night.alarm("loma-4").state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }

    @Test
    void at_other_sites_when_the_one_at_which_the_alarm_lies_is_no_longer_set_up() {
        link();
        night.quiet("loma-4-box", "pico-2-box", "rio-7-box").minutes(5);
        night.without("loma-4").minutes(1);

        assertThat(night.play()
                        .picture
                        .absence(Path.link("hub", "night"))
                        .orElseThrow()
                        .open())
                .isTrue();
        assertThat(night.play().picture.callouts())
                .anyMatch(callout -> callout.live() && !callout.facts().site().equals("loma-4"));
    }

    @Test
    void and_the_text_says_who_is_still_silent() {
        link();
        night.quiet("loma-4-box", "pico-2-box", "rio-7-box").minutes(5);
        night.back("loma-4-box", "pico-2-box").minutes(1);
        night.now(new Stimulus.CalloutDue(night.play().picture.callouts().get(0).id()));

        var draft = new Draft(night.play().picture, Fixtures.at("2026-11-25T01:12"));
        var shared = new Circumstances(draft)
                .of(night.link("loma-4", "hub"))
                .shared()
                .orElseThrow();
        assertThat(shared.sites()).extracting(site -> site.id()).containsExactly("rio-7");
    }

    /** People name it by what it is taken for, as the API does. */
    @Test
    void and_what_it_explains_is_withheld_as_long_as_it_lasts() {
        night.suppressed("loma-4", "camera", "box/comms-loss")
                .suppressed("loma-4", "tank", "box/power-off")
                .box("loma-4-box", "loma-4", "wells", "", true)
                .box("loma-4-pump", "loma-4", "pump", "", false)
                .says("loma-4-box", Map.of("wells", true))
                .minutes(5);
        night.quiet("loma-4-box").minutes(4);
        high("camera");
        high("tank");

        assertThat(night.alarm("loma-4").condition()).isEqualTo("comms-loss");
        assertThat(state("camera")).isEqualTo(AlarmState.SUPPRESSED_BY_DESIGN);
        assertThat(state("tank")).isEqualTo(AlarmState.UNACKNOWLEDGED);

        night.back("loma-4-box").minutes(1);

        assertThat(state("camera")).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }

    private void high(String point) {
        var key = new AlarmKey("loma-4", point, "high");
        night.now(new Stimulus.Reported("loma-4-pump", List.of(Fixtures.active(key, Fixtures.at("2026-11-25T01:09")))));
    }

    private AlarmState state(String point) {
        return night.play().picture.alarm(new AlarmKey("loma-4", point, "high")).state();
    }

    private void link() {
        night.box("loma-4-box", "loma-4", "wells", "hub", false)
                .box("pico-2-box", "pico-2", "mains", "hub", false)
                .box("rio-7-box", "rio-7", "plant", "hub", true)
                .minutes(5);
    }
}
