package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Points that are not read any more: whether that is the box, which is one alarm, or each of them. */
class UnreadPointsScenarioTest {

    private static final String[] FOUR = UnreadPoints.ALL.toArray(String[]::new);

    private UnreadPoints box = new UnreadPoints(Optional.of(Duration.ofMinutes(1)));

    @Test
    void a_box_that_dies_after_a_heartbeat_is_one_alarm_and_not_one_for_each_point() {
        box.reads(0, 10, FOUR).beats(0, 13);

        box.until(240);

        assertThat(box.silent()).isTrue();
        assertThat(box.missed()).isEmpty();
    }

    @Test
    void a_box_that_dies_just_before_its_points_are_due_is_waited_for() {
        box.reads(0, 10, FOUR).beats(0, 23);

        box.until(26);
        assertThat(box.silent()).isFalse();
        assertThat(box.missed()).isEmpty();
        box.until(240);

        assertThat(box.silent()).isTrue();
        assertThat(box.missed()).isEmpty();
    }

    @Test
    void a_sensor_that_is_dead_is_missed_in_its_time_although_its_box_says_that_it_lives() {
        box.reads(0, 10, FOUR)
                .reads(15, 60, "water-tank", "oil-tank", "separator")
                .beats(0, 60);

        box.until(24);
        assertThat(box.missed()).isEmpty();
        box.until(25);

        assertThat(box.missed()).containsExactly("flowline");
    }

    @Test
    void a_heartbeat_that_got_lost_puts_a_dead_sensor_off_only_until_the_box_is_known_to_live() {
        box.reads(0, 10, FOUR).beats(0, 23).beats(25, 60);

        box.until(25);
        assertThat(box.missed()).isEmpty();
        box.until(27);

        assertThat(box.silent()).isFalse();
        assertThat(box.missed()).containsExactly(FOUR);
    }

    @Test
    void a_box_that_is_always_late_with_its_heartbeats_hides_no_dead_sensor() {
        box.reads(0, 10, FOUR);
        for (int minute = 1; minute <= 240; minute += 2) {
            box.beats(minute, minute);
        }

        box.until(30);

        assertThat(box.silent()).isFalse();
        assertThat(box.missed()).containsExactly(FOUR);
    }

    @Test
    void when_the_box_is_back_its_points_have_their_time_anew_once() {
        box.reads(0, 10, FOUR).beats(0, 13).beats(60, 240).reads(65, 240, "oil-tank", "separator", "water-tank");

        box.until(84);
        assertThat(box.silent()).isFalse();
        assertThat(box.missed()).isEmpty();
        box.until(90);

        assertThat(box.missed()).containsExactly("flowline");
    }

    @Test
    void of_a_box_without_heartbeats_the_first_point_is_enough_however_it_posts_them() {
        box = without().readsSingly(0, 10, FOUR).until(240);

        assertThat(box.missed()).containsExactly("flowline");
    }

    @Test
    void a_sensor_that_died_long_ago_does_not_hide_the_death_of_a_box_without_heartbeats() {
        box = without()
                .reads(0, 10, FOUR)
                .reads(15, 120, "oil-tank", "separator", "water-tank")
                .acknowledged(26, "flowline");

        box.until(134);
        assertThat(box.missed()).containsExactly("flowline");
        box.until(480);

        assertThat(box.missed()).containsExactly("flowline", "oil-tank");
    }

    @Test
    void one_that_was_missed_once_more_after_the_box_last_spoke_stands_for_the_box() {
        box = without().reads(0, 10, FOUR).reads(15, 60, "oil-tank", "separator", "water-tank");
        box.readsSingly(65, 65, "flowline", "oil-tank", "separator", "water-tank")
                .until(480);

        assertThat(box.of("flowline").occurrence()).isEqualTo(1);
        assertThat(box.missed()).containsExactly("flowline");
    }

    @Test
    void a_point_that_was_put_aside_does_not_stand_for_the_box() {
        box = without()
                .reads(0, 10, FOUR)
                .shelved(26, "flowline", Duration.ofHours(12))
                .until(480);

        assertThat(box.missed()).containsExactly("flowline", "oil-tank");
    }

    @Test
    void a_point_out_of_service_does_not_stand_for_the_box() {
        box = without().reads(0, 10, FOUR).outOfService(12, "flowline").until(480);

        assertThat(box.missed()).containsExactly("flowline", "oil-tank");
    }

    private static UnreadPoints without() {
        return new UnreadPoints(Optional.empty());
    }
}
