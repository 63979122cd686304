package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.ladder.Callout;

/** A silence of several sites lies at one of them. Whatever is done to that one, somebody is called about the others. */
class SilenceOfOtherSitesScenarioTest {

    private final Silent night = new Silent();

    @BeforeEach
    void threeSites() {
        night.box("loma-4-box", "loma-4", "wells", "hub", false)
                .box("pico-2-box", "pico-2", "mains", "hub", false)
                .box("rio-7-box", "rio-7", "plant", "hub", true)
                .minutes(5);
    }

    @Test
    void is_an_alarm_of_its_own_while_the_one_of_the_link_is_shelved() {
        hubDown();
        night.back("pico-2-box", "rio-7-box").minutes(5);
        shelve();
        night.minutes(60);
        night.quiet("pico-2-box", "rio-7-box").minutes(10);

        assertThat(night.link("loma-4", "hub").state()).isEqualTo(AlarmState.SHELVED);
        assertThat(live()).singleElement().matches(callout -> !at(callout, "loma-4"));
        assertThat(last()).contains("2 sites on hub link").contains("PICO 2, RIO 7");
    }

    @Test
    void ends_without_the_shelved_one_and_leaves_it_as_it_is() {
        hubDown();
        night.back("pico-2-box", "rio-7-box").minutes(5);
        shelve();
        night.minutes(60).quiet("pico-2-box", "rio-7-box").minutes(10);
        assertThat(night.alarm("pico-2").active()).isTrue();
        night.back("pico-2-box", "rio-7-box").minutes(5);

        assertThat(night.alarm("pico-2").active()).isFalse();
        assertThat(night.link("loma-4", "hub").state()).isEqualTo(AlarmState.SHELVED);
        assertThat(night.link("loma-4", "hub").active()).isTrue();

        night.back("loma-4-box").minutes(2);

        assertThat(night.link("loma-4", "hub").active()).isFalse();
    }

    @Test
    void is_told_when_the_link_fails_again_within_the_shelf() {
        hubDown();
        shelve();
        night.back("loma-4-box", "pico-2-box", "rio-7-box").minutes(60);
        hubDown();

        assertThat(live()).isNotEmpty();
        assertThat(last()).contains("PICO 2, RIO 7");
    }

    @Test
    void goes_on_at_their_own_when_somebody_begins_to_work_on_the_site() {
        hubDown();
        night.inService("loma-4", false).minutes(1);

        assertThat(night.alarm("loma-4").state()).isEqualTo(AlarmState.OUT_OF_SERVICE);
        assertThat(live()).singleElement().matches(callout -> !at(callout, "loma-4"));
        assertThat(last()).contains("2 sites on hub link").contains("PICO 2, RIO 7");
    }

    @Test
    void is_not_said_to_be_over_when_the_work_ends_at_once() {
        hubDown();
        night.inService("loma-4", false).inService("loma-4", true).minutes(5);

        assertThat(night.texts()).noneMatch(text -> text.contains("back to normal"));
        assertThat(night.onLink("hub").members()).containsKeys("loma-4-box", "pico-2-box", "rio-7-box");
        assertThat(live()).hasSize(1);
    }

    @Test
    void goes_on_when_only_the_point_of_the_link_is_taken_out_of_service() {
        hubDown();
        night.outOfService("loma-4", "link-hub").minutes(1);

        assertThat(night.link("loma-4", "hub").state()).isEqualTo(AlarmState.OUT_OF_SERVICE);
        assertThat(live()).isNotEmpty();
        assertThat(last()).contains("PICO 2, RIO 7");
    }

    @Test
    void is_told_when_the_point_of_the_link_was_out_of_service_before() {
        night.outOfService("loma-4", "link-hub");
        hubDown();

        assertThat(live()).hasSize(1);
        assertThat(last()).contains("PICO 2, RIO 7");
    }

    @Test
    void goes_on_when_it_had_joined_that_of_the_box() {
        joined();
        night.outOfService("loma-4", "box").minutes(1);

        assertThat(night.alarm("loma-4").state()).isEqualTo(AlarmState.OUT_OF_SERVICE);
        assertThat(live()).singleElement().matches(callout -> at(callout, "pico-2"));
        assertThat(last()).startsWith("PICO 2");
    }

    @Test
    void goes_on_although_something_explains_that_of_the_box() {
        night.suppressed("loma-4", "box", "tank/high")
                .box("loma-4-pump", "loma-4", "wells", "", true)
                .edited()
                .minutes(5);
        joined();
        var tank = new AlarmKey("loma-4", "tank", "high");
        var high = Fixtures.active(tank, Fixtures.at("2026-11-25T01:16"));
        night.now(new Stimulus.Reported("loma-4-pump", List.of(high)));

        assertThat(night.alarm("loma-4").state()).isEqualTo(AlarmState.UNACKNOWLEDGED);

        night.back("pico-2-box")
                .minutes(2)
                .now(new Stimulus.SetupChanged(night.play().picture.setup(), "owner"));

        assertThat(night.alarm("loma-4").state()).isEqualTo(AlarmState.SUPPRESSED_BY_DESIGN);
    }

    @Test
    void goes_on_when_the_site_is_gone_whose_own_box_is_back() {
        hubDown();
        night.back("loma-4-box").minutes(2).without("loma-4").minutes(1);

        assertThat(live()).singleElement().matches(callout -> !at(callout, "loma-4"));
        assertThat(last()).contains("PICO 2, RIO 7");
        assertThat(night.link("loma-4", "hub").active()).isFalse();
    }

    private void hubDown() {
        night.quiet("loma-4-box", "pico-2-box", "rio-7-box").minutes(5);
    }

    /** LOMA 4 is found silent when nobody else is. */
    private void joined() {
        night.quiet("loma-4-box").minutes(2).quiet("pico-2-box").minutes(4);
        assertThat(night.absence("loma-4").members()).containsKeys("loma-4-box", "pico-2-box");
    }

    private void shelve() {
        AlarmKey key = night.link("loma-4", "hub").key();
        night.now(new Stimulus.Shelve(key, Duration.ofHours(12), "its radio is broken", "ana"));
    }

    private List<Callout> live() {
        return night.play().picture.callouts().stream().filter(Callout::live).toList();
    }

    private static boolean at(Callout callout, String site) {
        return callout.facts().site().equals(site);
    }

    private String last() {
        List<String> texts = night.texts();
        return texts.get(texts.size() - 1);
    }
}
