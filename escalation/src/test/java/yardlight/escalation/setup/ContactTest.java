package yardlight.escalation.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNoException;
import static yardlight.escalation.Fixtures.CHICAGO;
import static yardlight.escalation.Fixtures.at;
import static yardlight.escalation.alarm.Priority.CRITICAL;
import static yardlight.escalation.alarm.Priority.HIGH;
import static yardlight.escalation.alarm.Priority.LOW;
import static yardlight.escalation.alarm.Priority.MEDIUM;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.quiet.QuietHours;

class ContactTest {

    @Test
    void a_contact_without_quiet_hours_is_told_at_once() {
        assertThat(contact().heldUntil(LOW, at("2026-11-25T02:00"))).isEmpty();
    }

    @Test
    void a_notice_waits_for_the_end_of_the_quiet_hours() {
        var ana = contact(quiet("21:00", "06:00", HIGH));

        assertThat(ana.heldUntil(MEDIUM, at("2026-11-24T20:59"))).isEmpty();
        assertThat(ana.heldUntil(MEDIUM, at("2026-11-24T21:00"))).contains(at("2026-11-25T06:00"));
        assertThat(ana.heldUntil(MEDIUM, at("2026-11-25T06:00"))).isEmpty();
    }

    @Test
    void what_is_urgent_enough_gets_through() {
        var ana = contact(quiet("21:00", "06:00", HIGH));

        assertThat(ana.heldUntil(HIGH, at("2026-11-25T02:00"))).isEmpty();
        assertThat(ana.heldUntil(CRITICAL, at("2026-11-25T02:00"))).isEmpty();
    }

    @Test
    void quiet_hours_that_touch_are_one() {
        var ana = contact(quiet("06:00", "08:00", HIGH), quiet("21:00", "06:00", HIGH), quiet("08:00", "09:30", HIGH));

        assertThat(ana.heldUntil(MEDIUM, at("2026-11-24T23:00"))).contains(at("2026-11-25T09:30"));
    }

    @Test
    void quiet_hours_that_overlap_end_with_the_last() {
        var ana = contact(quiet("21:00", "06:00", HIGH), quiet("05:00", "07:00", HIGH), quiet("22:00", "04:00", HIGH));

        assertThat(ana.heldUntil(MEDIUM, at("2026-11-24T23:00"))).contains(at("2026-11-25T07:00"));
    }

    @Test
    void quiet_hours_that_let_the_notice_through_do_not_lengthen_others() {
        var ana = contact(quiet("21:00", "06:00", HIGH), quiet("06:00", "09:00", MEDIUM));

        assertThat(ana.heldUntil(MEDIUM, at("2026-11-24T23:00"))).contains(at("2026-11-25T06:00"));
        assertThat(ana.heldUntil(LOW, at("2026-11-24T23:00"))).contains(at("2026-11-25T09:00"));
    }

    @Test
    void days_that_follow_each_other_without_a_break_are_one() {
        var weekend = new QuietHours(
                LocalTime.of(18, 0),
                LocalTime.of(17, 59),
                CHICAGO,
                HIGH,
                EnumSet.of(DayOfWeek.FRIDAY, DayOfWeek.SATURDAY));
        var breaks = quiet("17:30", "18:30", HIGH);

        assertThat(contact(weekend, breaks).heldUntil(MEDIUM, at("2026-11-27T20:00")))
                .contains(at("2026-11-29T18:30"));
    }

    @Test
    @Timeout(5)
    void quiet_around_the_clock_is_asked_again_after_a_week_and_does_not_loop_for_ever() {
        Instant now = at("2026-11-25T02:00");
        var hermit = contact(quiet("00:00", "12:00", CRITICAL), quiet("12:00", "00:00", CRITICAL));

        assertThat(hermit.heldUntil(HIGH, now)).hasValueSatisfying(until -> {
            assertThat(until).isAfter(now.plus(Duration.ofDays(8)));
            assertThat(until).isBefore(now.plus(Duration.ofDays(10)));
        });
    }

    @Test
    void even_who_is_quiet_around_the_clock_is_told_what_is_critical() {
        var hermit = contact(quiet("00:00", "12:00", CRITICAL), quiet("12:00", "00:00", CRITICAL));

        assertThat(hermit.heldUntil(CRITICAL, at("2026-11-25T02:00"))).isEmpty();
    }

    @Test
    void the_end_of_the_wait_is_a_moment_at_which_nothing_holds_the_notice() {
        var ana = contact(quiet("21:00", "06:00", HIGH), quiet("05:30", "06:30", HIGH), quiet("12:00", "13:00", HIGH));

        for (Instant now = at("2026-03-06T00:00"); now.isBefore(at("2026-03-10T00:00")); now = now.plusSeconds(600)) {
            Instant end = ana.heldUntil(MEDIUM, now).orElse(now);

            assertThat(ana.heldUntil(MEDIUM, end)).as("%s", now).isEmpty();
        }
    }

    @Test
    void a_limit_that_lets_nothing_through_is_refused() {
        assertThatNoException().isThrownBy(() -> limited(1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> limited(0))
                .withMessage("textsPerHour must be at least 1: 0");
    }

    private static QuietHours quiet(String from, String to, Priority lets) {
        return QuietHours.daily(LocalTime.parse(from), LocalTime.parse(to), CHICAGO, lets);
    }

    private static Contact contact(QuietHours... quiet) {
        return new Contact("ana", "Ana Ruelas", CHICAGO, Language.EN, List.of(), List.of(quiet), 20);
    }

    private static Contact limited(int perHour) {
        return new Contact("ana", "Ana Ruelas", CHICAGO, Language.EN, List.of(), List.of(), perHour);
    }
}
