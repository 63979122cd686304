package yardlight.gateway.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.db.alarm.RecordedCallout;
import yardlight.db.alarm.RecordedNotice;
import yardlight.escalation.Answer;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Place;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.reply.Said;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Stop;
import yardlight.gateway.FakeLane;

class CallsTest {

    private static final AlarmKey HIGHER = new AlarmKey(Fixtures.TANK.site(), Fixtures.TANK.point(), "overflow");
    private static final Instant NOW = Fixtures.at("2026-11-25T02:30");
    private static final AlarmKey SEPARATOR = new AlarmKey("mesa-9", "separator", "high");

    private final Setup setup = Fixtures.theSetup();
    private final FakeLane lane = new FakeLane();
    private final List<RecordedAlarm> current = new ArrayList<>();
    private Set<AlarmKey> stops = Set.of();

    @Test
    void ok_with_a_code_takes_the_call_with_it() {
        waits(47, Fixtures.TANK, "ana");
        waits(51, SEPARATOR, "ana");

        Replies.Outcome outcome = of("ana").ok(List.of(51), lane);

        assertThat(outcome.answer()).isEqualTo("You have it, Ana Ruelas: Mesa 9 SEPARATOR high.");
        assertThat(lane.decided).containsExactly(new Stimulus.Acknowledge(SEPARATOR, "ana", "text", Optional.empty()));
    }

    @Test
    void ok_with_several_codes_takes_them_all() {
        waits(47, Fixtures.TANK, "ana");
        waits(51, SEPARATOR, "ana");

        of("ana").ok(List.of(47, 51), lane);

        assertThat(lane.decided).hasSize(2);
    }

    @Test
    void ok_alone_takes_the_only_call_that_waits_for_this_person() {
        waits(47, Fixtures.TANK, "ana");
        waits(51, SEPARATOR, "ben");

        of("ana").ok(List.of(), lane);

        assertThat(lane.decided)
                .containsExactly(new Stimulus.Acknowledge(Fixtures.TANK, "ana", "text", Optional.empty()));
    }

    @Test
    void ok_alone_takes_nothing_when_several_calls_wait_and_asks_which() {
        waits(47, Fixtures.TANK, "ana");
        waits(51, SEPARATOR, "ana");

        assertThat(of("ana").ok(List.of(), lane).answer())
                .isEqualTo("Several things wait: send OK and one of 47, 51, or ALL.");
        assertThat(lane.decided).isEmpty();
    }

    @Test
    void a_late_ok_hears_who_was_faster() {
        taken(47, Fixtures.TANK, "ben", "2026-11-25T02:21");

        assertThat(of("ana").ok(List.of(47), lane).answer()).isEqualTo("Ben Tully has it since 2:21 AM.");
        assertThat(of("ana").ok(List.of(), lane).answer()).isEqualTo("Ben Tully has it since 2:21 AM.");
        assertThat(of("ana").all(lane).answer()).isEqualTo("Ben Tully has it since 2:21 AM.");
        assertThat(lane.decided).isEmpty();
    }

    @Test
    void a_number_that_nothing_has_takes_nothing() {
        waits(47, Fixtures.TANK, "ana");

        assertThat(of("ana").ok(List.of(74), lane).answer())
                .isEqualTo("Nothing with the number 74 waits for an answer.");
        assertThat(lane.decided).isEmpty();
    }

    @Test
    void all_takes_what_this_person_was_told_and_nothing_else() {
        waits(47, Fixtures.TANK, "ana");
        waits(51, SEPARATOR, "ben");

        assertThat(of("ana").all(lane).acknowledged()).hasSize(1);
        assertThat(lane.decided)
                .containsExactly(new Stimulus.Acknowledge(Fixtures.TANK, "ana", "text", Optional.empty()));
    }

    @Test
    void hold_puts_it_away_for_as_long_as_was_said() {
        waits(47, Fixtures.TANK, "ana");

        String answer = of("ana")
                .hold(new Said.Hold(Optional.of(47), Optional.of(Duration.ofHours(2))), lane)
                .answer();

        assertThat(answer).isEqualTo("Put away until 4:30 AM: Mesa 9 WATER TANK high-high.");
        assertThat(lane.decided)
                .containsExactly(new Stimulus.Shelve(Fixtures.TANK, Duration.ofHours(2), "by text", "ana"));
    }

    @Test
    void hold_without_a_time_asks_for_one() {
        waits(47, Fixtures.TANK, "ana");

        assertThat(of("ana")
                        .hold(new Said.Hold(Optional.empty(), Optional.empty()), lane)
                        .answer())
                .isEqualTo("For how long? Send it with a time, such as HOLD 47 2H.");
        assertThat(lane.decided).isEmpty();
    }

    @Test
    void hold_says_why_when_the_rules_forbid_it() {
        waits(47, Fixtures.TANK, "ana");
        lane.answer = new Answer.Refusal("the longest is 7 days");

        assertThat(of("ana")
                        .hold(new Said.Hold(Optional.of(47), Optional.of(Duration.ofDays(9))), lane)
                        .answer())
                .isEqualTo("Nothing was done: the longest is 7 days.");
    }

    /** A limit that was passed while an answer was on its way is not answered by it. */
    @Test
    void ok_leaves_what_came_after_the_text_that_was_read() {
        Instant told = NOW.minusSeconds(60);
        waits(47, Fixtures.TANK, told.minusSeconds(1), told);
        waits(47, HIGHER, told.plusSeconds(50), told);

        assertThat(of("ana").ok(List.of(47), lane).answer())
                .isEqualTo("You have it, Ana Ruelas: Mesa 9 WATER TANK high-high.");
        assertThat(lane.decided)
                .extracting(said -> ((Stimulus.Acknowledge) said).key())
                .containsExactly(Fixtures.TANK);
    }

    @Test
    void ok_of_somebody_who_had_no_text_takes_all_of_it() {
        Instant told = NOW.minusSeconds(60);
        waits(47, Fixtures.TANK, told.minusSeconds(1), told);
        waits(47, HIGHER, told.plusSeconds(50), told);

        of("ben").ok(List.of(47), lane);

        assertThat(lane.decided).hasSize(2);
    }

    @Test
    void status_says_what_waits_and_what_is_taken() {
        waits(47, Fixtures.TANK, "ana");
        taken(51, SEPARATOR, "ben", "2026-11-25T02:21");

        assertThat(of("ana").status())
                .isEqualTo("1 wait for an answer, 1 are taken: Mesa 9 WATER TANK high-high, Mesa 9 SEPARATOR high.");
    }

    @Test
    void status_of_a_calm_night_is_calm() {
        assertThat(of("ana").status()).isEqualTo("All quiet: nothing is in alarm.");
    }

    @Test
    void who_is_called_first_is_named_once() {
        assertThat(of("ana").calledFirst()).isEqualTo("Called first now: Ana Ruelas.");
    }

    @Test
    void who_wants_nothing_more_by_any_line_is_not_called_first() {
        stops = Set.of(Stop.key("ana", "5755550101@txt.example"), Stop.key("ana", "ana@mesa.example"));

        assertThat(of("ana").calledFirst()).isEqualTo("Nobody would be called first now.");
    }

    @Test
    void everyone_is_called_first_by_name() {
        var everyone = new Ladder(
                "night",
                Ladder.EndsWhen.ACKNOWLEDGED,
                List.of(new Rung(List.of(Rung.EVERYONE), Duration.ofMinutes(5), 1)),
                0);

        assertThat(of("ana", Fixtures.calling(everyone)).calledFirst())
                .isEqualTo("Called first now: Ana Ruelas, Ben Tully.");
    }

    private Calls of(String contact) {
        return of(contact, setup);
    }

    private Calls of(String contact, Setup setup) {
        return new Calls(
                Waiting.of(current),
                stops,
                Set.of(contact),
                setup.contacts().get(contact),
                Sentences.in(Language.EN),
                setup,
                new Clocks(InstantSource.fixed(NOW)));
    }

    private void waits(int code, AlarmKey key, String told) {
        current.add(new RecordedAlarm(
                Alarm.normal(key)
                        .draft()
                        .state(AlarmState.UNACKNOWLEDGED)
                        .occurrence(1)
                        .done(),
                Optional.of(new RecordedCallout(
                        new Callout.Calling(facts(code, key, told), Place.FOOT, NOW.plusSeconds(300)), List.of()))));
    }

    /** What came at a time, with a text to Ana that was handed over at another. */
    private void waits(int code, AlarmKey key, Instant received, Instant told) {
        Notice notice = Notice.made("n-" + key, "ana", List.of(key + "." + code), Priority.HIGH, told);
        current.add(new RecordedAlarm(
                Alarm.normal(key)
                        .draft()
                        .state(AlarmState.UNACKNOWLEDGED)
                        .occurrence(1)
                        .receivedAt(Optional.of(received))
                        .done(),
                Optional.of(new RecordedCallout(
                        new Callout.Calling(facts(code, key, "ana"), Place.FOOT, NOW.plusSeconds(300)),
                        List.of(new RecordedNotice(
                                notice, Optional.of("sms-mail"), Optional.of(told), Optional.empty(), List.of()))))));
    }

    private void taken(int code, AlarmKey key, String by, String at) {
        current.add(new RecordedAlarm(
                Alarm.normal(key)
                        .draft()
                        .state(AlarmState.ACKNOWLEDGED)
                        .occurrence(1)
                        .acknowledgedBy(Optional.of(by))
                        .acknowledgedAt(Optional.of(Fixtures.at(at)))
                        .done(),
                Optional.of(new RecordedCallout(
                        new Callout.Answered(facts(code, key, "ana"), Place.FOOT, by, Fixtures.at(at)), List.of()))));
    }

    private static Callout.Facts facts(int code, AlarmKey key, String told) {
        return new Callout.Facts(
                key + "." + code,
                code,
                key.site(),
                "night",
                Priority.HIGH,
                List.of(key),
                Fixtures.at("2026-11-25T02:13"),
                1,
                1,
                Set.of(told),
                Map.of());
    }
}
