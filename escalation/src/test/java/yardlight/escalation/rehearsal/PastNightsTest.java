package yardlight.escalation.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.at;
import static yardlight.escalation.Fixtures.calling;
import static yardlight.escalation.Fixtures.theSetup;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Nuisance;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Setup;

/** One night as it was: the tank is high at 2:13, Ana is texted three times, Ben once, and Ben answers after two minutes. */
class PastNightsTest {

    private static final Instant SINCE = at("2026-11-25T02:13");
    private static final Instant ANSWERED = at("2026-11-25T02:30");
    private static final String ALARM = "mesa-9.water-tank.high-high.1";

    @Test
    void by_the_same_ladder_it_is_the_same_night() {
        Season again = played(theSetup(), past(Priority.HIGH));

        assertThat(told(again)).containsExactly("02:13 ana", "02:18 ana", "02:23 ana", "02:28 ana", "02:28 ben");
        assertThat(again.calls())
                .singleElement()
                .isEqualTo(new PastCall(
                        TANK,
                        ALARM,
                        Priority.HIGH,
                        SINCE,
                        true,
                        Optional.of(SINCE),
                        Optional.of("ben"),
                        Optional.of(ANSWERED)));
    }

    @Test
    void who_answered_does_so_as_long_after_being_told_as_they_took() {
        Season would = played(calling(ladder(new Rung(List.of("ben"), Duration.ofMinutes(5), 2))), past(Priority.HIGH));

        assertThat(told(would)).containsExactly("02:13 ben");
        assertThat(would.calls().get(0).answeredAt()).contains(at("2026-11-25T02:15"));
        assertThat(would.calls().get(0).waited()).contains(Duration.ofMinutes(2));
    }

    @Test
    void who_is_told_by_the_other_ladder_alone_and_never_answered_does_not_answer() {
        Season would = played(calling(ladder(new Rung(List.of("ana"), Duration.ofMinutes(5), 2))), past(Priority.HIGH));

        assertThat(told(would)).containsExactly("02:13 ana", "02:18 ana");
        assertThat(would.calls().get(0).by()).isEmpty();
    }

    @Test
    void who_answered_without_having_been_texted_does_so_when_they_did() {
        Past past = past(List.of(began(), answered("owner", at("2026-11-25T02:20"))), List.of(), Priority.HIGH);

        Season would = played(calling(ladder(new Rung(List.of("ana"), Duration.ofMinutes(5), 9))), past);

        assertThat(told(would)).containsExactly("02:13 ana", "02:18 ana");
        assertThat(would.calls().get(0).answeredAt()).contains(at("2026-11-25T02:20"));
    }

    @Test
    void what_is_answered_with_another_alarm_is_left_to_the_engine() {
        var with = new PastDeed(ANSWERED, TANK, ALARM, PastDeed.What.ANSWERED_WITH, "ben", Duration.ZERO, "");

        Season would = played(theSetup(), past(List.of(began(), with), List.of(), Priority.HIGH));

        assertThat(would.calls().get(0).by()).isEmpty();
        assertThat(Season.really(past(List.of(began(), with), List.of(), Priority.HIGH))
                        .calls()
                        .get(0)
                        .by())
                .contains("ben");
    }

    @Test
    void a_delay_is_not_waited_for_a_second_time() {
        var slow = new Timing(
                Duration.ofMinutes(10), Duration.ofMinutes(10), false, Optional.empty(), Nuisance.Numbers.USUAL);
        Setup setup = new Setup(
                List.of(Fixtures.aSite()),
                List.of(Fixtures.aBox()),
                List.of(Fixtures.waterTank().with(slow)),
                List.of(Fixtures.ana(), Fixtures.ben()),
                List.of(),
                List.of(new Ladder(
                        "night",
                        Ladder.EndsWhen.NORMAL,
                        List.of(new Rung(List.of("ben"), Duration.ofMinutes(5), 9)),
                        0)));
        var ended = new PastDeed(at("2026-11-25T02:20"), TANK, ALARM, PastDeed.What.ENDED, "", Duration.ZERO, "");

        Season would = played(setup, past(List.of(began(), ended), List.of(), Priority.HIGH));

        assertThat(told(would)).containsExactly("02:13 ben", "02:18 ben");
    }

    @Test
    void an_answer_may_be_tried_that_nobody_gave() {
        Season would = PastNights.play(
                        theSetup(),
                        past(Priority.HIGH),
                        at("2026-11-26T12:00"),
                        Map.of("ana", Duration.ofMinutes(7)),
                        Set.of())
                .orElseThrow();

        assertThat(told(would)).containsExactly("02:13 ana", "02:18 ana");
        assertThat(would.calls().get(0).by()).contains("ana");
        assertThat(would.calls().get(0).waited()).contains(Duration.ofMinutes(7));
    }

    @Test
    void what_somebody_knew_of_in_the_moment_in_which_it_came_calls_nobody() {
        var known = new PastDeed(SINCE, TANK, ALARM, PastDeed.What.KNOWN, "", Duration.ZERO, "");

        assertThat(past(List.of(began(), known), List.of(), Priority.HIGH).calls())
                .isZero();
        assertThat(played(theSetup(), past(List.of(began(), known), List.of(), Priority.HIGH))
                        .texts())
                .isEmpty();
    }

    @Test
    void more_work_than_seconds_of_it_is_not_played() {
        var endless = new Ladder(
                "night",
                Ladder.EndsWhen.ACKNOWLEDGED,
                List.of(new Rung(List.of(Rung.EVERYONE), Duration.ofMillis(100), 100)),
                3000);

        assertThat(PastNights.play(
                        calling(endless),
                        past(List.of(began()), List.of(), Priority.CRITICAL),
                        at("2026-11-26T12:00"),
                        Map.of(),
                        Set.of()))
                .isEmpty();
    }

    @Test
    void a_season_of_two_thousand_alarms_takes_moments() {
        var deeds = new ArrayList<PastDeed>();
        var texts = new ArrayList<PastText>();
        for (int i = 0; i < 2000; i++) {
            Instant at = SINCE.plus(Duration.ofHours(4L * i));
            AlarmKey key = new AlarmKey("mesa-9", "point-" + i % 40, "high");
            String id = "mesa-9." + key.point() + ".high." + i;
            deeds.add(new PastDeed(at, key, id, PastDeed.What.BEGAN, "", Duration.ZERO, ""));
            texts.add(PastText.of(at, "ana", "sms-mail", Set.of("mesa-9")));
            if (i % 10 > 0) {
                deeds.add(new PastDeed(at.plusSeconds(700), key, id, PastDeed.What.ANSWERED, "ana", Duration.ZERO, ""));
            }
            deeds.add(new PastDeed(at.plusSeconds(5000), key, id, PastDeed.What.ENDED, "", Duration.ZERO, ""));
        }
        Instant to = SINCE.plus(Duration.ofDays(400));

        long start = System.nanoTime();
        Season would = PastNights.play(theSetup(), new Past(SINCE, to, deeds, texts, Map.of()), to, Map.of(), Set.of())
                .orElseThrow();
        Duration took = Duration.ofNanos(System.nanoTime() - start);

        System.out.println("a season of 2,000 alarms, " + would.texts().size() + " texts: " + took.toMillis() + " ms");
        assertThat(would.calls()).hasSize(2000);
        assertThat(would.calls().stream().filter(call -> call.by().isPresent())).hasSize(1800);
        assertThat(took).isLessThan(Duration.ofSeconds(30));
    }

    private static Season played(Setup setup, Past past) {
        return PastNights.play(setup, past, at("2026-11-26T12:00"), Map.of(), Set.of())
                .orElseThrow();
    }

    private static Ladder ladder(Rung rung) {
        return new Ladder("night", Ladder.EndsWhen.ACKNOWLEDGED, List.of(rung), 0);
    }

    private static PastDeed began() {
        return new PastDeed(SINCE, TANK, ALARM, PastDeed.What.BEGAN, "", Duration.ZERO, "");
    }

    private static PastDeed answered(String by, Instant when) {
        return new PastDeed(when, TANK, ALARM, PastDeed.What.ANSWERED, by, Duration.ZERO, "");
    }

    private static Past past(Priority priority) {
        return past(
                List.of(began(), answered("ben", ANSWERED)),
                List.of(
                        text("02:13", "ana"),
                        text("02:18", "ana"),
                        text("02:23", "ana"),
                        text("02:28", "ana"),
                        text("02:28", "ben")),
                priority);
    }

    private static Past past(List<PastDeed> deeds, List<PastText> texts, Priority priority) {
        return new Past(at("2026-11-24T12:00"), at("2026-11-25T12:00"), deeds, texts, Map.of(ALARM, priority));
    }

    private static PastText text(String time, String contact) {
        return PastText.of(at("2026-11-25T" + time), contact, "sms-mail", Set.of("mesa-9"));
    }

    private static List<String> told(Season season) {
        return season.texts().stream()
                .map(text -> text.at().atZone(Fixtures.CHICAGO).toLocalTime() + " " + text.contact())
                .toList();
    }
}
