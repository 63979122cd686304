package yardlight.demo.night;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.demo.boxes.Flutter;
import yardlight.demo.night.NightScript.Act;
import yardlight.demo.night.NightScript.Deed;

class NightScriptTest {

    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

    @Test
    void goes_from_five_to_two_until_ten_past_six_in_order() {
        List<LocalTime> times = NightScript.acts().stream().map(Act::at).toList();

        assertThat(times)
                .isSorted()
                .doesNotHaveDuplicates()
                .startsWith(LocalTime.of(1, 55))
                .endsWith(LocalTime.of(6, 10));
        assertThat(NightScript.acts()).extracting(Act::deed).containsExactlyInAnyOrder(Deed.values());
    }

    @Test
    void has_the_tank_at_thirteen_past_two_by_the_clock_of_the_site() {
        Act tank = NightScript.acts().stream()
                .filter(act -> act.deed() == Deed.TANK_RISES)
                .findFirst()
                .orElseThrow();

        // Chicago is six hours behind UTC in November.
        assertThat(NightScript.instant(tank.at(), CHICAGO)).isEqualTo(Instant.parse("2026-11-25T08:13:00Z"));
    }

    @Test
    void lets_ana_sleep_through_the_tank_and_answer_the_float() {
        assertThat(NightScript.answersAt("ana", at("02:13:02"), CHICAGO)).isEmpty();
        assertThat(NightScript.answersAt("ana", at("02:18:02"), CHICAGO)).isEmpty();
        assertThat(NightScript.answersAt("ana", at("02:40:02"), CHICAGO)).contains(at("02:43:02"));
    }

    @Test
    void lets_ben_answer_after_two_minutes_and_ida_not_at_all() {
        assertThat(NightScript.answersAt("ben", at("02:23:00"), CHICAGO)).contains(at("02:25:00"));
        assertThat(NightScript.answersAt("ida", at("02:23:00"), CHICAGO)).isEmpty();
    }

    @Test
    void has_thirty_changes_of_the_float_within_five_minutes_the_last_one_to_normal() {
        Duration all = Flutter.EVERY.multipliedBy(Flutter.CHANGES - 1);

        assertThat(Flutter.CHANGES).isEqualTo(30);
        assertThat(all).isLessThanOrEqualTo(Duration.ofMinutes(5));
        assertThat((Flutter.CHANGES - 1) % 2)
                .as("odd changes go back to normal")
                .isEqualTo(1);
    }

    private static Instant at(String time) {
        return NightScript.instant(LocalTime.parse(time), CHICAGO);
    }
}
