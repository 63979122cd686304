package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.active;
import static yardlight.escalation.Fixtures.at;
import static yardlight.escalation.Fixtures.theSetup;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Stimulus.Fate;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;

/** A notice to Ana, who has two lines and a rung of five minutes, is taken by a carrier that gives receipts. */
class NoReceiptTest {

    private static final Instant NIGHT = at("2026-11-25T02:13");
    private static final Duration TWO_MINUTES = Duration.ofMinutes(2);

    private final AtomicInteger code = new AtomicInteger(47);
    private final Escalator escalator = new Escalator(Links.NONE, code::getAndIncrement);
    private final Picture picture = new Picture(theSetup());

    @BeforeEach
    void ana_is_called() {
        decide(0, new Stimulus.Reported("mesa-9-box", List.of(active(TANK, NIGHT))));
    }

    @Test
    void goes_on_to_the_next_line_without_waiting_for_the_rung() {
        taken(3, 0, TWO_MINUTES);
        assertThat(notice().dueAt()).contains(NIGHT.plusSeconds(123));

        Decision decision = decide(123, due());

        assertThat(notice().line()).isEqualTo(1);
        assertThat(notice().state()).isEqualTo(NoticeState.QUEUED);
        assertThat(callout().dueAt()).contains(NIGHT.plus(Duration.ofMinutes(5)));
        assertThat(decision.entries())
                .extracting(Entry::words)
                .containsExactly("taken by sms-mail at 2:13 AM but no receipt for 2 min; the next line is tried");
    }

    @Test
    void is_not_in_a_hurry_before_its_time() {
        taken(3, 0, TWO_MINUTES);
        decide(122, due());

        assertThat(notice().state()).isEqualTo(NoticeState.HANDED_OVER);
        assertThat(notice().dueAt()).contains(NIGHT.plusSeconds(123));
    }

    @Test
    void waits_for_nothing_where_no_receipt_is_expected() {
        decide(3, new Stimulus.NoticeFate(notice().id(), 0, Fate.HANDED_OVER, "250 taken"));
        decide(600, due());

        assertThat(notice().dueAt()).isEmpty();
        assertThat(notice().state()).isEqualTo(NoticeState.HANDED_OVER);
        assertThat(notice().line()).isZero();
    }

    @Test
    void waits_for_half_of_the_time_to_the_next_rung_at_most() {
        taken(100, 0, Duration.ofMinutes(30));

        assertThat(notice().dueAt()).contains(NIGHT.plusSeconds(200));
    }

    @Test
    void gives_a_receipt_some_seconds_however_near_the_next_rung_is() {
        taken(298, 0, TWO_MINUTES);

        assertThat(notice().dueAt()).contains(NIGHT.plusSeconds(308));
    }

    @Test
    void stays_handed_over_where_no_line_is_left() {
        decide(1, new Stimulus.NoticeFate(notice().id(), 0, Fate.REFUSED, "550 no"));
        taken(3, 1, TWO_MINUTES);

        assertThat(notice().dueAt()).isEmpty();
        assertThat(notice().state()).isEqualTo(NoticeState.HANDED_OVER);
    }

    @Test
    void stays_handed_over_while_the_other_carrier_is_down() {
        decide(1, new Stimulus.Carrier("mail", true, "421 busy"));
        taken(3, 0, TWO_MINUTES);
        Decision decision = decide(123, due());

        assertThat(notice().state()).isEqualTo(NoticeState.HANDED_OVER);
        assertThat(notice().dueAt()).isEmpty();
        assertThat(decision.entries())
                .extracting(Entry::words)
                .containsExactly("taken by sms-mail at 2:13 AM but no receipt for 2 min; no other line works");
    }

    @Test
    void bothers_nobody_when_somebody_has_answered_meanwhile() {
        taken(3, 0, TWO_MINUTES);
        decide(60, new Stimulus.Acknowledge(TANK, "ben", "page", Optional.empty()));
        Decision decision = decide(123, due());

        assertThat(notice().state()).isEqualTo(NoticeState.HANDED_OVER);
        assertThat(notice().dueAt()).isEmpty();
        assertThat(decision.entries()).isEmpty();
    }

    @Test
    void waits_no_longer_once_a_receipt_is_there() {
        taken(3, 0, TWO_MINUTES);
        fate(20, 0, Fate.DELIVERED);
        decide(123, due());

        assertThat(notice().dueAt()).isEmpty();
        assertThat(notice().state()).isEqualTo(NoticeState.DELIVERED);
    }

    @Test
    void is_settled_by_a_late_receipt_that_takes_back_the_second_copy() {
        taken(3, 0, TWO_MINUTES);
        decide(123, due());
        fate(130, 0, Fate.DELIVERED);

        assertThat(notice().state()).isEqualTo(NoticeState.DELIVERED);
        assertThat(notice().line()).isZero();
        assertThat(picture.queued("mail")).isEmpty();
    }

    @Test
    void stays_delivered_when_the_second_copy_was_under_way_already() {
        taken(3, 0, TWO_MINUTES);
        decide(123, due());
        fate(130, 0, Fate.DELIVERED);
        Decision decision = taken(131, 1, TWO_MINUTES);

        assertThat(notice().state()).isEqualTo(NoticeState.DELIVERED);
        assertThat(notice().dueAt()).isEmpty();
        assertThat(decision.entries())
                .extracting(Entry::words)
                .containsExactly("handed over once more: the carrier's words");
    }

    @Test
    void is_not_refused_by_the_line_whose_receipt_was_missed() {
        taken(3, 0, TWO_MINUTES);
        decide(123, due());
        fate(125, 1, Fate.HANDED_OVER);
        fate(130, 0, Fate.REFUSED);

        assertThat(notice().state()).isEqualTo(NoticeState.HANDED_OVER);
        assertThat(notice().line()).isEqualTo(1);
    }

    @Test
    void waits_for_the_line_that_took_it_when_another_was_tried_already() {
        decide(30, new Stimulus.Overdue(notice().id(), 0));
        taken(31, 0, TWO_MINUTES);
        assertThat(notice().line()).isZero();

        decide(151, due());

        assertThat(notice().line()).isEqualTo(1);
        assertThat(notice().state()).isEqualTo(NoticeState.QUEUED);
    }

    @Test
    void does_not_wake_whose_quiet_hours_have_begun_since() {
        picture.setup(quietFrom(LocalTime.of(2, 14)));
        taken(3, 0, TWO_MINUTES);
        Decision decision = decide(123, due());

        assertThat(notice().state()).isEqualTo(NoticeState.HELD);
        assertThat(notice().heldUntil()).contains(at("2026-11-25T06:00"));
        assertThat(picture.desk("ana").waiting()).hasSize(1);
        assertThat(callout().facts().told()).contains("ana");
        assertThat(decision.entries())
                .extracting(Entry::words)
                .first()
                .isEqualTo("taken by sms-mail at 2:13 AM but no receipt for 2 min");
    }

    @Test
    void that_is_refused_does_not_wake_them_either_and_others_are_called_at_once() {
        picture.setup(quietFrom(LocalTime.of(2, 14)));
        taken(3, 0, TWO_MINUTES);
        fate(70, 0, Fate.REFUSED);

        assertThat(notice().state()).isEqualTo(NoticeState.HELD);
        assertThat(notice().line()).isEqualTo(1);
        assertThat(callout().facts().held()).containsKey("ana");
        assertThat(callout().facts().told()).containsExactly("ben");
    }

    private static Setup quietFrom(LocalTime time) {
        Contact ana = Fixtures.ana();
        QuietHours quiet = QuietHours.daily(time, LocalTime.of(6, 0), Fixtures.CHICAGO, Priority.CRITICAL);
        var quietly = new Contact("ana", ana.name(), ana.zone(), ana.language(), ana.lines(), List.of(quiet), 20);
        return new Setup(
                List.of(Fixtures.aSite()),
                List.of(Fixtures.aBox()),
                List.of(Fixtures.waterTank()),
                List.of(quietly, Fixtures.ben()),
                List.of(Fixtures.crew()),
                List.of(Fixtures.night()));
    }

    private Stimulus due() {
        return new Stimulus.NoticeDue(notice().id());
    }

    private Decision taken(int seconds, int line, Duration within) {
        return decide(
                seconds,
                new Stimulus.NoticeFate(
                        notice().id(), line, Fate.HANDED_OVER, "the carrier's words", Optional.of(within)));
    }

    private void fate(int seconds, int line, Fate fate) {
        decide(seconds, new Stimulus.NoticeFate(notice().id(), line, fate, "the carrier's words"));
    }

    private Decision decide(int seconds, Stimulus stimulus) {
        Decision decision = escalator.decide(picture, stimulus, NIGHT.plusSeconds(seconds));
        picture.apply(decision.changes());
        return decision;
    }

    private Notice notice() {
        return picture.notices().get(0);
    }

    private Callout callout() {
        return picture.callouts().get(0);
    }
}
