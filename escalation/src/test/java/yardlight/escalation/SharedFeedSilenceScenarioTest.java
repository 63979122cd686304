package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.heartbeat.Verdict;

/** Boxes of several sites say that their feed is off, and die with it: that is told once, and nobody else is forgotten. */
class SharedFeedSilenceScenarioTest {

    private static final String BOTH = "POWER OFF: 2 sites on north feed since 1:05 AM: LOMA 4, PICO 2. Reply ALL";

    private final Silent night = new Silent();

    @BeforeEach
    void two_sites_on_one_feed() {
        night.box("loma-4-box", "loma-4", "north", "", false)
                .box("loma-4-pump", "loma-4", "pump", "", true)
                .box("pico-2-box", "pico-2", "north", "", false)
                .box("pico-2-pump", "pico-2", "pump", "", true)
                .box("rio-7-box", "rio-7", "north", "", false)
                .says("loma-4-box", Map.of("north", true))
                .says("pico-2-box", Map.of("north", true))
                .minutes(5);
    }

    @Test
    void their_silence_is_explained_by_the_alarms_of_both_sites() {
        off();

        assertThat(night.onFeed("north").verdict()).isEqualTo(Verdict.POWER_OFF);
        assertThat(night.onFeed("north").members()).containsOnlyKeys("loma-4-box", "pico-2-box");
        assertThat(silence().state()).isEqualTo(AlarmState.SUPPRESSED_BY_DESIGN);
        assertThat(night.texts()).containsExactly(BOTH);
    }

    @Test
    void it_ends_without_a_text() {
        off();
        night.says("loma-4-box", Map.of("north", true))
                .says("pico-2-box", Map.of("north", true))
                .anew("loma-4-box", "pico-2-box")
                .minutes(10);

        assertThat(night.onFeed("north").open()).isFalse();
        assertThat(silence().state()).isEqualTo(AlarmState.NORMAL);
        assertThat(night.texts())
                .filteredOn(text -> !text.contains("back to normal"))
                .containsExactly(BOTH);
    }

    @Test
    void a_site_that_nobody_was_told_of_is_news() {
        off();
        night.quiet("rio-7-box").minutes(5);

        assertThat(silence().state()).isEqualTo(AlarmState.SUPPRESSED_BY_DESIGN);
        assertThat(night.texts()).containsExactly(BOTH, "RIO 7 BOX SILENT 1:14 AM. Reply OK 49");
    }

    @Test
    void so_is_one_that_goes_quiet_with_them() {
        night.says("loma-4-box", Map.of("north", false))
                .says("pico-2-box", Map.of("north", false))
                .minutes(1);
        night.quiet("loma-4-box", "pico-2-box", "rio-7-box").minutes(5);

        assertThat(night.onFeed("north").members()).containsOnlyKeys("loma-4-box", "pico-2-box", "rio-7-box");
        assertThat(silence().state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(night.texts())
                .containsExactly(
                        BOTH, "POWER OFF: 3 sites on north feed since 1:05 AM: LOMA 4, PICO 2, RIO 7. Reply OK 49");
    }

    @ParameterizedTest
    @ValueSource(strings = {"loma-4", "pico-2"})
    void a_box_that_does_not_start_when_its_feed_is_back_is_news_after_three_minutes(String site) {
        off();
        night.says(site + "-pump", Map.of("north", true)).minutes(2);

        assertThat(night.play().picture.alarm(BoxAlarms.feedOff(site, "north")).active())
                .isFalse();
        assertThat(silence().state()).isEqualTo(AlarmState.SUPPRESSED_BY_DESIGN);

        night.minutes(3);
        assertThat(silence().state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(night.texts())
                .anyMatch(text -> text.startsWith("POWER OFF: 2 sites on north feed since 1:0") && !text.equals(BOTH));
    }

    @ParameterizedTest
    @ValueSource(strings = {"loma-4", "pico-2"})
    void who_works_on_the_feed_of_one_site_explains_nothing_by_it(String site) {
        off();
        night.outOfService(site, "power-north").minutes(1);

        assertThat(night.play().picture.alarm(BoxAlarms.feedOff(site, "north")).state())
                .isEqualTo(AlarmState.OUT_OF_SERVICE);
        assertThat(silence().state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(night.texts()).hasSize(2);
    }

    @Test
    void the_other_site_is_still_explained_when_one_is_no_longer_set_up() {
        off();
        night.without("pico-2").minutes(2);

        assertThat(night.onFeed("north").open()).isTrue();
        assertThat(silence().state()).isEqualTo(AlarmState.SUPPRESSED_BY_DESIGN);
        assertThat(night.play()
                        .picture
                        .alarm(BoxAlarms.feedOff("loma-4", "north"))
                        .active())
                .isTrue();
    }

    /** Both say with their last breath that the feed is off. */
    private void off() {
        night.says("loma-4-box", Map.of("north", false))
                .says("pico-2-box", Map.of("north", false))
                .minutes(1);
        night.quiet("loma-4-box", "pico-2-box").minutes(5);
    }

    private Alarm silence() {
        return night.play().picture.alarm(BoxAlarms.silence(Path.feed("north", "night"), "loma-4"));
    }
}
