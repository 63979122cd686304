package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.heartbeat.Verdict;

/** Boxes that fall silent together are one alarm, and one text. */
class SharedSilenceScenarioTest {

    private final Silent night = new Silent();

    @BeforeEach
    void fourSites() {
        night.box("loma-4-box", "loma-4", "wells", "hub", false)
                .box("pico-2-box", "pico-2", "mains", "hub", false)
                .box("rio-7-box", "rio-7", "plant", "hub", true)
                .box("mesa-9-box", "mesa-9", "mains", "tower", false)
                .minutes(5);
    }

    @Test
    void a_link_that_is_down_is_one_alarm_that_names_its_sites() {
        night.quiet("loma-4-box", "pico-2-box", "rio-7-box").minutes(5);

        assertThat(night.onLink("hub").verdict()).isEqualTo(Verdict.COMMS_LOSS);
        assertThat(night.onLink("hub").members()).containsOnlyKeys("loma-4-box", "pico-2-box", "rio-7-box");
        assertThat(night.link("loma-4", "hub").condition()).isEqualTo("comms-loss");
        assertThat(night.play().picture.callouts()).hasSize(1);
        assertThat(night.texts()).hasSize(1);
        assertThat(night.texts().get(0)).startsWith("COMMS LOST: ").contains(" on hub link since 1:04 AM: LOMA 4");
    }

    @Test
    void who_is_back_leaves_and_the_last_one_ends_it() {
        night.quiet("loma-4-box", "pico-2-box", "rio-7-box").minutes(5);
        night.back("loma-4-box").minutes(1);

        assertThat(night.link("loma-4", "hub").active()).isTrue();

        night.back("pico-2-box", "rio-7-box").minutes(1);

        assertThat(night.link("loma-4", "hub").active()).isFalse();
        assertThat(night.onLink("hub").endedAt()).isPresent();
        assertThat(night.texts()).hasSize(1);
    }

    @Test
    void who_is_late_joins_without_another_text() {
        night.quiet("loma-4-box", "rio-7-box").minutes(5).quiet("pico-2-box").minutes(5);

        assertThat(night.play().picture.callouts()).hasSize(1);
    }

    @Test
    void another_box_elsewhere_is_another_matter() {
        night.quiet("loma-4-box", "pico-2-box", "rio-7-box").minutes(5);
        night.quiet("mesa-9-box").minutes(4);

        assertThat(night.alarm("mesa-9").active()).isTrue();
        assertThat(night.play().picture.callouts()).hasSize(2);
    }

    @Test
    void all_back_with_a_fresh_start_were_without_power_after_all() {
        night.quiet("loma-4-box", "pico-2-box", "rio-7-box").minutes(5);
        night.anew("loma-4-box", "pico-2-box", "rio-7-box").minutes(1);

        assertThat(night.onLink("hub").told()).isEqualTo(Verdict.COMMS_LOSS);
        assertThat(night.onLink("hub").verdict()).isNotEqualTo(Verdict.COMMS_LOSS);
    }

    @Test
    void a_feed_over_several_sites_is_one_alarm() {
        Silent other = new Silent()
                .box("loma-4-box", "loma-4", "north line", "", false)
                .box("pico-2-box", "pico-2", "north line", "", false)
                .minutes(5);
        other.quiet("loma-4-box", "pico-2-box").minutes(5);

        assertThat(other.play().picture.callouts()).hasSize(1);
        assertThat(other.texts())
                .containsExactly("POWER OFF: 2 sites on north line feed since 1:04 AM: LOMA 4, PICO 2. Reply OK 47");
    }

    @Test
    void it_turns_out_to_be_the_power_when_another_box_says_so() {
        Silent other = new Silent()
                .box("loma-4-box", "loma-4", "wells", "", false)
                .box("loma-4-pump", "loma-4", "wells", "", true)
                .minutes(5);
        other.says("loma-4-pump", Map.of()).quiet("loma-4-box").minutes(4);

        assertThat(other.absence("loma-4").verdict()).isEqualTo(Verdict.SILENT);

        other.says("loma-4-pump", Map.of("wells", false)).minutes(1);

        assertThat(other.absence("loma-4").verdict()).isEqualTo(Verdict.POWER_OFF);
        assertThat(other.alarm("loma-4").state()).isEqualTo(AlarmState.SUPPRESSED_BY_DESIGN);
        assertThat(other.texts()).containsExactly("LOMA 4 WELLS POWER OFF 1:09 AM. Reply OK 48");
    }

    @Test
    void a_link_that_comes_and_goes_is_one_alarm_with_a_count_and_one_text() {
        Silent other = new Silent().box("loma-4-box", "loma-4", "", "", true).minutes(5);
        for (int times = 0; times < 4; times++) {
            other.quiet("loma-4-box").minutes(4).back("loma-4-box").minutes(6);
        }

        assertThat(other.texts()).hasSize(1);
        assertThat(other.alarm("loma-4").repeats()).isEqualTo(3);
        assertThat(other.alarm("loma-4").occurrence()).isEqualTo(1);
    }

    @Test
    void a_box_without_power_does_not_make_power_of_another_one_on_its_link() {
        Silent other = new Silent()
                .box("loma-4-box", "loma-4", "mains", "hub", false)
                .box("pico-2-box", "pico-2", "wells", "hub", false)
                .box("pico-2-pump", "pico-2", "pump", "", true)
                .minutes(5);
        other.quiet("loma-4-box").minutes(1);
        other.says("pico-2-box", Map.of("wells", false))
                .says("pico-2-pump", Map.of("wells", false))
                .minutes(1);
        other.quiet("pico-2-box").minutes(5);

        assertThat(other.absence("pico-2").verdict()).isEqualTo(Verdict.POWER_OFF);
        assertThat(other.absence("loma-4").verdict()).isNotEqualTo(Verdict.POWER_OFF);
    }
}
