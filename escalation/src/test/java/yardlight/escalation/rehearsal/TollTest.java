package yardlight.escalation.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.at;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Priority;

/** What a season took from people. */
class TollTest {

    private static final Instant EVENING = at("2026-11-25T21:50");

    @Test
    void nights_wakings_and_mails_are_counted_as_the_report_of_the_burden_does() {
        Toll toll = Toll.of(
                new Season(
                        List.of(
                                text("21:59", "ana", "sms-mail"),
                                text("22:00", "ana", "sms-mail"),
                                text("22:20", "ana", "sms-mail"),
                                text("22:21", "ana", "mail"),
                                text("23:00", "ben", "push")),
                        List.of()),
                contact -> Fixtures.CHICAGO);

        assertThat(toll.people())
                .containsExactly(new Toll.Person("ana", 3, 1, 2, 1), new Toll.Person("ben", 1, 0, 1, 1));
        assertThat(List.of(toll.texts(), toll.mails(), toll.atNight(), toll.wakings()))
                .containsExactly(4, 1, 3, 2);
        assertThat(toll.longest()).isEmpty();
    }

    @Test
    void waits_are_those_of_what_was_answered() {
        Toll toll = Toll.of(
                new Season(
                        List.of(),
                        List.of(
                                waited(Optional.of(4)),
                                waited(Optional.of(90)),
                                waited(Optional.empty()),
                                waited(Optional.of(2)))),
                contact -> Fixtures.CHICAGO);

        assertThat(toll.alarms()).isEqualTo(4);
        assertThat(toll.unanswered()).isEqualTo(1);
        assertThat(toll.longest()).contains(Duration.ofMinutes(90));
        assertThat(toll.median()).contains(Duration.ofMinutes(4));
    }

    @Test
    void what_calls_nobody_is_neither_unanswered_nor_waited_for() {
        PastCall silent = new PastCall(
                TANK, "a", Priority.HIGH, EVENING, false, Optional.empty(), Optional.empty(), Optional.empty());
        var season = new Season(List.of(), List.of(waited(Optional.of(4)), silent));

        Toll toll = Toll.of(season, contact -> Fixtures.CHICAGO);

        assertThat(toll.alarms()).isEqualTo(1);
        assertThat(toll.unanswered()).isZero();
        assertThat(season.lines()).extracting(Rehearsal.Line::what).containsExactly("answered");
    }

    private static PastText text(String time, String contact, String channel) {
        return PastText.of(at("2026-11-25T" + time), contact, channel, Set.of("mesa-9"));
    }

    private static PastCall waited(Optional<Integer> minutes) {
        return new PastCall(
                TANK,
                "a",
                Priority.HIGH,
                EVENING,
                true,
                Optional.of(EVENING),
                minutes.map(any -> "ana"),
                minutes.map(after -> EVENING.plus(Duration.ofMinutes(after))));
    }
}
