package yardlight.escalation.quiet;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.at;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Flood;
import yardlight.escalation.alarm.Priority;

class DeskTest {

    private static final Instant NOW = at("2026-11-25T02:00");
    private static final Restraint TWO_A_MINUTE = new Restraint(
            2, 3, Duration.ofMinutes(1), 4, new Flood.Numbers(6, 3, Duration.ofMinutes(10)), Duration.ofSeconds(75));

    private Desk desk = Desk.empty("ana");

    @Test
    void an_empty_desk_has_room_at_once() {
        assertThat(room(0)).isZero();
        assertThat(desk.dueAt()).isEmpty();
    }

    @Test
    void what_is_over_the_burst_waits_until_the_first_of_it_is_old_enough() {
        sends(0, "a");
        assertThat(room(10)).isEqualTo(10);

        sends(10, "b");
        assertThat(room(20)).isEqualTo(60);
        assertThat(room(59)).isEqualTo(60);
        assertThat(room(60)).isEqualTo(60);
        assertThat(room(61)).isEqualTo(61);
    }

    @Test
    void an_answered_text_no_longer_keeps_others_back() {
        sends(0, "a");
        sends(10, "b");

        desk = desk.answered("a");

        assertThat(room(20)).isEqualTo(20);
    }

    @Test
    void a_text_about_several_callouts_is_answered_with_one_of_them() {
        sends(0, "a", "b");
        sends(10, "c");

        desk = desk.answered("b");

        assertThat(desk.sent()).extracting(Desk.Sent::open).containsExactly(false, true);
    }

    @Test
    void answers_leave_the_limit_of_the_hour_alone() {
        for (int i = 0; i < 4; i++) {
            sends(i * 100L, "a");
        }
        desk = desk.answered("a");

        assertThat(room(400)).isEqualTo(3600);
        assertThat(room(3600)).isEqualTo(3600);
    }

    @Test
    void the_limit_of_the_hour_waits_for_as_many_as_are_too_many() {
        for (int i = 0; i < 6; i++) {
            sends(i * 100L, "critical");
        }

        assertThat(room(600)).isEqualTo(3800);
        assertThat(room(3800)).isEqualTo(3800);
    }

    @Test
    void the_later_of_the_two_limits_holds() {
        desk = Desk.empty("ana");
        sends(0, "a");
        sends(1, "b");
        sends(3590, "c");
        sends(3591, "d");

        assertThat(room(3592)).isEqualTo(3650);
    }

    /** Two hours against a plain count: the desk never gives room too early, nor later than it must. */
    @Test
    void room_is_the_first_second_at_which_neither_limit_is_reached() {
        long[] sent = {0, 5, 700, 1500, 1501, 3000, 3601, 3602, 4000};
        for (int i = 0; i < sent.length; i++) {
            sends(sent[i], "a");
            long next = i + 1 < sent.length ? sent[i + 1] : 9000;
            for (long now = sent[i]; now < next; now += 29) {
                assertThat(room(now)).as("at second %s", now).isEqualTo(firstFree(sent, now));
            }
        }
    }

    @Test
    void texts_older_than_an_hour_are_forgotten() {
        sends(0, "a");
        sends(3599, "b");
        assertThat(desk.sent()).hasSize(2);

        sends(3600, "c");
        assertThat(desk.sent()).extracting(Desk.Sent::at).containsExactly(second(3599), second(3600));
    }

    @Test
    void what_waits_is_ready_at_its_time_and_in_the_order_in_which_it_came() {
        desk = desk.waits("n2", second(60)).waits("n1", second(60)).waits("n3", second(90));

        assertThat(desk.dueAt()).contains(second(60));
        assertThat(desk.ready(second(59))).isEmpty();
        assertThat(desk.ready(second(60))).containsExactly("n2", "n1");
    }

    @Test
    void what_was_sent_or_cancelled_no_longer_waits() {
        desk = desk.waits("n1", second(60)).waits("n2", second(90)).without(Set.of("n1"));

        assertThat(desk.dueAt()).contains(second(90));
        assertThat(desk.ready(second(100))).containsExactly("n2");
    }

    @Test
    void critical_may_be_one_more_at_once_and_knows_no_hour() {
        sends(0, "a");
        sends(1, "b");
        assertThat(room(2, Priority.CRITICAL)).isEqualTo(2);

        sends(2, "c");
        assertThat(room(3, Priority.CRITICAL)).isEqualTo(60);

        sends(60, "d");
        sends(61, "e");
        assertThat(room(700, Priority.CRITICAL)).isEqualTo(700);
        assertThat(room(700, Priority.HIGH)).isEqualTo(3601);
    }

    @Test
    void in_a_flood_everything_keeps_its_pace_answered_or_not() {
        sends(0, "a", "b", "c");
        desk = desk.answered("a");
        desk = desk.waits("n1", second(90)).waits("n2", second(90));
        assertThat(room(5, Priority.CRITICAL)).isEqualTo(5);

        desk = desk.waits("n3", second(90));

        assertThat(flood(5)).isTrue();
        assertThat(room(5, Priority.CRITICAL)).isEqualTo(75);
        assertThat(room(75, Priority.CRITICAL)).isEqualTo(75);
    }

    @Test
    void a_flood_ends_when_there_is_little_left_of_it() {
        sends(0, "a", "b", "c", "d");
        sends(300, "e", "f", "g");
        assertThat(flood(300)).isTrue();
        assertThat(flood(600)).isTrue();
        assertThat(flood(899)).isTrue();
        assertThat(flood(900)).isFalse();
        sends(900, "h", "i", "j", "k", "l");
        assertThat(flood(900)).isFalse();
    }

    @Test
    void no_more_of_a_text_is_remembered_than_a_flood_can_be_told_by() {
        sends(0, IntStream.range(0, 1_000).mapToObj(i -> "c" + i).toArray(String[]::new));

        assertThat(desk.sent().get(0).callouts()).hasSize(50).startsWith("c0", "c1");
    }

    @Test
    void bundles_are_counted_for_their_ids() {
        assertThat(desk.oneMoreBundle().oneMoreBundle().bundles()).isEqualTo(2);
    }

    private static long firstFree(long[] sent, long now) {
        for (long t = now; ; t++) {
            if (count(sent, now, t, 60) < 2 && count(sent, now, t, 3600) < 4) {
                return t;
            }
        }
    }

    private static long count(long[] sent, long now, long t, long window) {
        return Arrays.stream(sent).filter(at -> at <= now && at > t - window).count();
    }

    private long room(long second) {
        return room(second, Priority.HIGH);
    }

    private long room(long second, Priority priority) {
        return Duration.between(NOW, desk.room(priority, second(second), TWO_A_MINUTE))
                .toSeconds();
    }

    private boolean flood(long second) {
        desk = desk.looked(second(second), TWO_A_MINUTE.flood());
        return desk.flood();
    }

    private void sends(long second, String... callouts) {
        desk = desk.sends(second(second), List.of(callouts));
    }

    private static Instant second(long second) {
        return NOW.plusSeconds(second);
    }
}
