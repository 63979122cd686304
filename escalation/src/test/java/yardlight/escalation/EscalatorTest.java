package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.PUMP;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.active;
import static yardlight.escalation.Fixtures.at;
import static yardlight.escalation.Fixtures.normal;
import static yardlight.escalation.Fixtures.theSetup;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Outcome;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.sentence.Sentence;
import yardlight.escalation.wording.Links;

/** The decision, one stimulus at a time: old state in, new state out. */
class EscalatorTest {

    private static final Instant NIGHT = at("2026-11-25T02:13");

    private final AtomicInteger code = new AtomicInteger(47);
    private final Escalator escalator = new Escalator(Links.NONE, code::getAndIncrement);
    private final Picture picture = new Picture(theSetup());

    @Test
    void an_alarm_that_occurs_calls_the_first_rung_and_waits() {
        Decision decision = post(NIGHT, active(TANK, NIGHT));

        assertThat(decision.answer())
                .isEqualTo(new Answer.Results(
                        List.of(new Answer.Result(Outcome.OCCURRED, Optional.of("mesa-9.water-tank.high-high.1")))));
        assertThat(picture.alarm(TANK).state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(theCallout().kind()).isEqualTo(Callout.Kind.CALLING);
        assertThat(theCallout().dueAt()).contains(NIGHT.plus(Duration.ofMinutes(5)));
        assertThat(picture.notices())
                .singleElement()
                .satisfies(notice -> assertThat(notice.contact()).isEqualTo("ana"))
                .satisfies(notice -> assertThat(notice.state()).isEqualTo(NoticeState.QUEUED))
                .satisfies(notice -> assertThat(notice.text()).contains("OK 47"));
    }

    @Test
    void the_same_arguments_give_the_same_decision() {
        var stimulus = new Stimulus.Reported("mesa-9-box", List.of(active(TANK, NIGHT)));

        Decision once = new Escalator(Links.NONE, () -> 47).decide(picture, stimulus, NIGHT);
        Decision again = new Escalator(Links.NONE, () -> 47).decide(picture, stimulus, NIGHT);

        assertThat(again).isEqualTo(once);
    }

    @Test
    void a_repeat_is_counted_and_calls_nobody() {
        post(NIGHT, active(TANK, NIGHT));

        Decision decision = post(NIGHT.plusSeconds(30), active(TANK, NIGHT.plusSeconds(30)));

        assertThat(decision.changes().notices()).isEmpty();
        assertThat(decision.entries()).isNotEmpty();
        assertThat(picture.alarm(TANK).repeats()).isEqualTo(1);
    }

    @Test
    void an_answer_ends_the_callout() {
        post(NIGHT, active(TANK, NIGHT));

        decide(NIGHT.plusSeconds(60), new Stimulus.Acknowledge(TANK, "ana", "page", Optional.empty()));

        assertThat(picture.alarm(TANK).state()).isEqualTo(AlarmState.ACKNOWLEDGED);
        assertThat(theCallout()).isInstanceOf(Callout.Answered.class);
        assertThat(theCallout().dueAt()).isEmpty();
    }

    @Test
    void what_the_state_forbids_is_refused_with_a_reason_and_changes_nothing() {
        Decision decision = decide(NIGHT, new Stimulus.Acknowledge(TANK, "ana", "page", Optional.empty()));

        assertThat(decision.answer())
                .isEqualTo(new Answer.Refusal(Sentence.of(
                        "cannot",
                        "cannot acknowledge an alarm that is normal: water-tank/high-high",
                        "acknowledge",
                        "normal",
                        "water-tank/high-high")));
        assertThat(decision.changes().alarms()).isEmpty();
        assertThat(decision.entries())
                .singleElement()
                .satisfies(entry -> assertThat(entry.what()).isEqualTo(Entry.What.REFUSED));
    }

    @Test
    void what_is_over_by_the_end_of_a_backlog_calls_nobody() {
        Report before = declared(active(TANK, NIGHT.minusSeconds(7200)));
        Report after = declared(normal(TANK, NIGHT.minusSeconds(3600)));

        Decision decision = post(NIGHT, after, before);

        assertThat(((Answer.Results) decision.answer()).results())
                .extracting(Answer.Result::outcome)
                .containsExactly(Outcome.RETURNED, Outcome.OCCURRED);
        assertThat(picture.alarm(TANK).state()).isEqualTo(AlarmState.RETURNED_UNACKNOWLEDGED);
        assertThat(picture.callouts()).isEmpty();
    }

    @Test
    void a_pump_without_power_is_one_cause() {
        var power = new AlarmKey("mesa-9", "power-pump", "power-off");
        post(NIGHT, active(power, NIGHT));

        post(NIGHT.plusSeconds(5), active(PUMP, NIGHT.plusSeconds(5)));

        assertThat(picture.alarm(PUMP).state()).isEqualTo(AlarmState.SUPPRESSED_BY_DESIGN);
        assertThat(picture.callouts()).hasSize(1);
    }

    @Test
    void a_refusal_by_the_last_line_of_a_rung_moves_on_at_once() {
        post(NIGHT, active(TANK, NIGHT));
        Notice notice = picture.notices().get(0);

        refuse(notice);
        assertThat(picture.notice(notice.id()).orElseThrow().line()).isEqualTo(1);
        refuse(picture.notice(notice.id()).orElseThrow());

        assertThat(picture.notice(notice.id()).orElseThrow().state()).isEqualTo(NoticeState.REFUSED);
        assertThat(theCallout().place().rung()).isGreaterThan(0);
    }

    @Test
    void an_unknown_point_still_raises_an_alarm() {
        var rain = new AlarmKey("mesa-9", "rain-gauge", "high");

        post(
                NIGHT,
                new Report(
                        rain,
                        Optional.of("mesa-9-box"),
                        true,
                        Optional.of(Priority.HIGH),
                        Measured.NOTHING,
                        NIGHT,
                        false));

        assertThat(picture.notices())
                .singleElement()
                .satisfies(notice -> assertThat(notice.text()).containsIgnoringCase("rain gauge"));
    }

    private Decision post(Instant now, Report... reports) {
        return decide(now, new Stimulus.Reported("mesa-9-box", List.of(reports)));
    }

    private void refuse(Notice notice) {
        decide(
                NIGHT.plusSeconds(2),
                new Stimulus.NoticeFate(notice.id(), notice.line(), Stimulus.Fate.REFUSED, "550 no such user"));
    }

    private Decision decide(Instant now, Stimulus stimulus) {
        Decision decision = escalator.decide(picture, stimulus, now);
        picture.apply(decision.changes());
        return decision;
    }

    private Callout theCallout() {
        return picture.callouts().get(0);
    }

    private static Report declared(Report report) {
        return new Report(
                report.key(), report.box(), report.active(), report.priority(), report.measured(), report.at(), true);
    }
}
