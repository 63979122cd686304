package yardlight.escalation.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.at;
import static yardlight.escalation.Fixtures.calling;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;

/** Alarms that call anew: because they became more urgent after an answer, or because they came back before one. */
class PastNightsAnewTest {

    private static final String ALARM = "mesa-9.water-tank.high-high.1";

    @Test
    void what_calls_nobody_in_the_replay_is_not_among_what_nobody_answered() {
        Past past = past(
                List.of(
                        deed("02:00", PastDeed.What.BEGAN),
                        deed("02:05", PastDeed.What.ANSWERED),
                        deed("02:20", PastDeed.What.BEGAN),
                        deed("02:25", PastDeed.What.ANSWERED)),
                "02:00",
                "02:20");

        Season would = played(ben(5, 2), past);

        assertThat(Toll.of(Season.really(past), any -> Fixtures.CHICAGO).alarms())
                .isEqualTo(2);
        assertThat(would.calls()).extracting(PastCall::calls).containsExactly(true, false);
        Toll toll = Toll.of(would, any -> Fixtures.CHICAGO);
        assertThat(toll.alarms()).isEqualTo(1);
        assertThat(toll.unanswered()).isZero();
    }

    @Test
    void who_answered_once_answers_again_when_a_faster_ladder_makes_the_alarm_call_twice() {
        Past past = past(
                List.of(
                        deed("02:00", PastDeed.What.BEGAN),
                        deed("02:10", PastDeed.What.ENDED),
                        deed("02:30", PastDeed.What.BEGAN),
                        deed("02:40", PastDeed.What.ANSWERED)),
                "02:25");

        Season would = played(ben(20, 9), past);

        assertThat(would.texts())
                .extracting(PastText::at)
                .containsExactly(at("2026-11-25T02:00"), at("2026-11-25T02:30"));
        assertThat(would.calls())
                .singleElement()
                .satisfies(call -> assertThat(call.waited()).contains(Duration.ofMinutes(15)));
    }

    private static Ladder ben(int minutes, int rounds) {
        return new Ladder(
                "night",
                Ladder.EndsWhen.ACKNOWLEDGED,
                List.of(new Rung(List.of("ben"), Duration.ofMinutes(minutes), rounds)),
                0);
    }

    private static Season played(Ladder ladder, Past past) {
        return PastNights.play(calling(ladder), past, at("2026-11-26T12:00"), Map.of(), Set.of())
                .orElseThrow();
    }

    private static Past past(List<PastDeed> deeds, String... texts) {
        return new Past(
                at("2026-11-24T12:00"),
                at("2026-11-25T12:00"),
                deeds,
                List.of(texts).stream()
                        .map(time -> PastText.of(night(time), "ben", "sms-mail", Set.of("mesa-9")))
                        .toList(),
                Map.of(ALARM, Priority.HIGH));
    }

    private static PastDeed deed(String time, PastDeed.What what) {
        String by = what == PastDeed.What.ANSWERED ? "ben" : "";
        return new PastDeed(night(time), TANK, ALARM, what, by, Duration.ZERO, "");
    }

    private static Instant night(String time) {
        return at("2026-11-25T" + time);
    }
}
