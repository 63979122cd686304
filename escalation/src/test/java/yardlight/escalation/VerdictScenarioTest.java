package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.heartbeat.Verdict;

/** What a silence is taken for, by what the box said last and by who is silent too. */
class VerdictScenarioTest {

    private final Silent night = new Silent();

    @Test
    void nothing_is_known_of_a_box_alone_without_a_battery() {
        night.box("loma-4-box", "loma-4", "wells", "", false).minutes(5);
        night.quiet("loma-4-box").minutes(4);

        assertThat(night.absence("loma-4").verdict()).isEqualTo(Verdict.SILENT);
        assertThat(night.texts()).containsExactly("LOMA 4 BOX SILENT 1:07 AM. Reply OK 47");
    }

    @Test
    void a_battery_would_have_told_of_the_power() {
        night.box("loma-4-box", "loma-4", "wells", "", true).says("loma-4-box", Map.of("wells", true));
        night.minutes(5).quiet("loma-4-box").minutes(4);

        assertThat(night.absence("loma-4").verdict()).isEqualTo(Verdict.COMMS_LOSS);
        assertThat(night.texts()).containsExactly("LOMA 4 BOX COMMS LOST 1:07 AM. Reply OK 47");
    }

    @Test
    void a_box_whose_link_lives_may_be_broken_itself() {
        night.box("loma-4-box", "loma-4", "wells", "hub", true).says("loma-4-box", Map.of("wells", true));
        night.box("pico-2-box", "pico-2", "mains", "hub", true);
        night.minutes(5).quiet("loma-4-box").minutes(4);

        assertThat(night.absence("loma-4").verdict()).isEqualTo(Verdict.SILENT);
        assertThat(night.absence("loma-4").judgement().reasons()).contains("box pico-2-box speaks over the same link");
    }

    @Test
    void the_last_gasp_is_an_alarm_and_the_silence_after_it_no_second_one() {
        night.box("loma-4-box", "loma-4", "wells", "", false).says("loma-4-box", Map.of("wells", true));
        night.minutes(5).says("loma-4-box", Map.of("wells", false)).minutes(1);
        night.quiet("loma-4-box").minutes(4);

        assertThat(night.absence("loma-4").verdict()).isEqualTo(Verdict.POWER_OFF);
        assertThat(night.alarm("loma-4").condition()).isEqualTo("power-off");
        assertThat(night.alarm("loma-4").state()).isEqualTo(AlarmState.SUPPRESSED_BY_DESIGN);
        assertThat(night.texts()).containsExactly("LOMA 4 WELLS POWER OFF 1:05 AM. Reply OK 47");

        night.says("loma-4-box", Map.of("wells", true)).anew("loma-4-box").minutes(1);

        assertThat(night.alarm("loma-4").state()).isEqualTo(AlarmState.NORMAL);
    }

    @Test
    void a_box_that_is_still_starting_when_its_feed_is_back_is_no_second_text() {
        night.box("loma-4-box", "loma-4", "wells", "", false)
                .box("loma-4-pump", "loma-4", "wells", "", true)
                .says("loma-4-pump", Map.of("wells", true));
        night.minutes(5).says("loma-4-pump", Map.of("wells", false)).quiet("loma-4-box");
        night.minutes(5).says("loma-4-pump", Map.of("wells", true)).minutes(1);
        night.anew("loma-4-box").minutes(5);

        assertThat(night.texts()).containsExactly("LOMA 4 WELLS POWER OFF 1:05 AM. Reply OK 47");
        assertThat(night.alarm("loma-4").state()).isEqualTo(AlarmState.NORMAL);
    }

    @Test
    void two_on_one_feed_with_the_link_alive_are_the_power() {
        night.box("loma-4-box", "loma-4", "wells", "hub", false)
                .box("loma-4-pump", "loma-4", "wells", "hub", false)
                .box("pico-2-box", "pico-2", "mains", "hub", false);
        night.minutes(5).quiet("loma-4-box", "loma-4-pump").minutes(4);

        assertThat(night.absence("loma-4").verdict()).isEqualTo(Verdict.POWER_OFF);
        assertThat(night.absence("loma-4").members()).containsOnlyKeys("loma-4-box", "loma-4-pump");
        assertThat(night.texts()).containsExactly("LOMA 4 BOX POWER OFF 1:07 AM. Reply OK 47");
    }

    @Test
    void one_that_lives_on_the_same_feed_rules_out_the_power() {
        night.box("loma-4-box", "loma-4", "wells", "", false).box("loma-4-pump", "loma-4", "wells", "", false);
        night.minutes(5).quiet("loma-4-box").minutes(4);

        assertThat(night.absence("loma-4").verdict()).isEqualTo(Verdict.COMMS_LOSS);
    }

    @Test
    void a_fallen_battery_and_a_fallen_signal_count() {
        night.box("loma-4-box", "loma-4", "", "", true).says("loma-4-box", 13.6, -80);
        night.minutes(9)
                .says("loma-4-box", 12.4, -95)
                .minutes(1)
                .quiet("loma-4-box")
                .minutes(4);

        assertThat(night.absence("loma-4").judgement().reasons())
                .containsExactly(
                        "it has a battery and does not die with the mains",
                        "its battery had fallen to 12.4 V",
                        "its signal had fallen to -95 dBm");
    }

    @Test
    void a_fresh_uptime_says_that_it_was_the_power() {
        night.box("loma-4-box", "loma-4", "wells", "", false).minutes(5);
        night.quiet("loma-4-box").minutes(4).anew("loma-4-box").minutes(1);

        assertThat(night.absence("loma-4").told()).isEqualTo(Verdict.SILENT);
        assertThat(night.absence("loma-4").verdict()).isEqualTo(Verdict.POWER_OFF);
        assertThat(night.alarm("loma-4").condition()).isEqualTo("power-off");
        assertThat(night.play().log)
                .anyMatch(line ->
                        line.contains("is taken for power-off now, it was silent: box loma-4-box started anew"));
    }

    @Test
    void it_says_so_also_when_others_spoke_over_the_link_all_the_time() {
        night.box("loma-4-box", "loma-4", "wells", "hub", false).box("pico-2-box", "pico-2", "mains", "hub", false);
        night.minutes(5).quiet("loma-4-box").minutes(4).back("loma-4-box").minutes(1);

        assertThat(night.absence("loma-4").verdict()).isEqualTo(Verdict.COMMS_LOSS);
    }

    @Test
    void an_uptime_that_ran_through_says_that_it_was_the_link() {
        night.box("loma-4-box", "loma-4", "wells", "", false).minutes(5);
        night.quiet("loma-4-box").minutes(4).back("loma-4-box").minutes(1);

        assertThat(night.absence("loma-4").verdict()).isEqualTo(Verdict.COMMS_LOSS);
    }

    @Test
    void what_empties_the_tanks_without_power_while_what_fills_them_runs_is_critical() {
        night.box("loma-4-box", "loma-4", "wells", "", true);
        night.says("loma-4-box", Map.of("wells", true, "pump", true)).minutes(5);
        night.says("loma-4-box", Map.of("wells", true, "pump", false)).minutes(1);

        assertThat(night.texts())
                .containsExactly("LOMA 4 PUMP POWER OFF 1:05 AM, wells still on, tanks fill. Reply OK 47");
        assertThat(night.play().picture.callouts().get(0).facts().priority().word())
                .isEqualTo("critical");
    }

    @Test
    void it_becomes_critical_once_what_fills_the_tanks_is_back_alone() {
        night.box("loma-4-box", "loma-4", "wells", "", true);
        night.says("loma-4-box", Map.of("wells", false, "pump", false)).minutes(2);
        night.says("loma-4-box", Map.of("wells", true)).minutes(1);

        var pump = night.play().picture.alarm(BoxAlarms.feedOff("loma-4", "pump"));
        assertThat(pump.priority().word()).isEqualTo("critical");
    }

    @Test
    void a_box_has_three_minutes_to_start_once_its_feed_is_back() {
        night.box("loma-4-box", "loma-4", "wells", "", false)
                .box("loma-4-pump", "loma-4", "pump", "", true)
                .says("loma-4-pump", Map.of("wells", true, "pump", true))
                .minutes(5);
        night.says("loma-4-pump", Map.of("wells", false)).quiet("loma-4-box").minutes(5);

        assertThat(night.alarm("loma-4").state()).isEqualTo(AlarmState.SUPPRESSED_BY_DESIGN);

        night.says("loma-4-pump", Map.of("wells", true)).minutes(2);
        assertThat(night.alarm("loma-4").state()).isEqualTo(AlarmState.SUPPRESSED_BY_DESIGN);

        night.minutes(2);
        assertThat(night.alarm("loma-4").state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }
}
