package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.active;
import static yardlight.escalation.Fixtures.at;
import static yardlight.escalation.Fixtures.theSetup;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Stimulus.Fate;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;

/** What becomes of one notice to Ana, who has two lines, as carriers take it, refuse it, or say nothing. */
class FatesTest {

    private static final Instant NIGHT = at("2026-11-25T02:13");

    private final AtomicInteger code = new AtomicInteger(47);
    private final Escalator escalator = new Escalator(Links.NONE, code::getAndIncrement);
    private final Picture picture = new Picture(theSetup());

    @BeforeEach
    void ana_is_called() {
        decide(0, new Stimulus.Reported("mesa-9-box", List.of(active(TANK, NIGHT))));
    }

    @Test
    void goes_on_to_the_next_line_when_it_is_overdue_without_waiting_for_the_rung() {
        decide(30, new Stimulus.Overdue(notice().id(), 0));

        assertThat(notice().line()).isEqualTo(1);
        assertThat(notice().state()).isEqualTo(NoticeState.QUEUED);
        assertThat(callout().dueAt()).contains(NIGHT.plus(Duration.ofMinutes(5)));
    }

    @Test
    void begins_again_with_its_best_line_when_the_last_takes_too_long() {
        decide(30, new Stimulus.Overdue(notice().id(), 0));
        decide(60, new Stimulus.Overdue(notice().id(), 1));

        assertThat(notice().line()).isZero();
        assertThat(notice().state()).isEqualTo(NoticeState.QUEUED);
    }

    @Test
    void stays_on_its_last_line_however_long_it_takes_while_the_carrier_of_the_others_is_down() {
        decide(30, new Stimulus.Overdue(notice().id(), 0));
        decide(40, new Stimulus.Carrier("sms-mail", true, "421 busy"));
        Decision decision = decide(60, new Stimulus.Overdue(notice().id(), 1));

        assertThat(notice().line()).isEqualTo(1);
        assertThat(decision.entries()).isEmpty();
    }

    @Test
    void is_overdue_on_the_line_that_is_meant_and_on_no_other() {
        decide(30, new Stimulus.Overdue(notice().id(), 0));
        decide(31, new Stimulus.Overdue(notice().id(), 0));
        fate(40, 1, Fate.HANDED_OVER);
        decide(70, new Stimulus.Overdue(notice().id(), 1));

        assertThat(notice().line()).isEqualTo(1);
        assertThat(notice().state()).isEqualTo(NoticeState.HANDED_OVER);
    }

    @Test
    void is_not_overdue_twice_because_two_gateways_say_so() {
        Contact ana = Fixtures.ana();
        var lines = new ArrayList<>(ana.lines());
        lines.add(new Line("pager", "ana"));
        picture.setup(new Setup(
                List.of(Fixtures.aSite()),
                List.of(Fixtures.aBox()),
                List.of(),
                List.of(new Contact("ana", ana.name(), ana.zone(), ana.language(), lines, List.of(), 20)),
                List.of(),
                List.of(Fixtures.night())));

        decide(30, new Stimulus.Overdue(notice().id(), 0));
        decide(31, new Stimulus.Overdue(notice().id(), 0));

        assertThat(notice().line()).isEqualTo(1);
    }

    @Test
    void goes_on_to_the_next_line_when_nobody_said_twice_whether_it_was_taken() {
        fate(10, 0, Fate.UNCERTAIN);

        assertThat(notice().line()).isEqualTo(1);
        assertThat(notice().state()).isEqualTo(NoticeState.QUEUED);
    }

    @Test
    void counts_as_handed_over_when_there_is_no_other_line_to_try() {
        fate(10, 0, Fate.REFUSED);
        fate(20, 1, Fate.UNCERTAIN);

        assertThat(notice().state()).isEqualTo(NoticeState.HANDED_OVER);
    }

    @Test
    void is_not_refused_by_a_line_that_was_left_behind() {
        decide(30, new Stimulus.Overdue(notice().id(), 0));
        fate(31, 0, Fate.REFUSED);
        fate(32, 0, Fate.UNCERTAIN);

        assertThat(notice().line()).isEqualTo(1);
        assertThat(notice().state()).isEqualTo(NoticeState.QUEUED);
    }

    @Test
    void is_taken_by_a_line_that_was_left_behind() {
        decide(30, new Stimulus.Overdue(notice().id(), 0));
        fate(31, 0, Fate.HANDED_OVER);

        assertThat(notice().state()).isEqualTo(NoticeState.HANDED_OVER);
    }

    @Test
    void goes_on_to_the_next_line_when_a_carrier_says_later_that_it_will_not_get_there() {
        fate(10, 0, Fate.HANDED_OVER);
        fate(40, 0, Fate.REFUSED);

        assertThat(notice().line()).isEqualTo(1);
        assertThat(notice().state()).isEqualTo(NoticeState.QUEUED);
    }

    @Test
    void calls_the_next_rung_at_once_when_the_last_carrier_says_later_that_it_will_not_get_there() {
        fate(10, 0, Fate.REFUSED);
        fate(20, 1, Fate.HANDED_OVER);
        fate(40, 1, Fate.REFUSED);

        assertThat(notice().state()).isEqualTo(NoticeState.REFUSED);
        assertThat(callout().place().rung()).isPositive();
    }

    @Test
    void is_refused_for_the_record_only_when_nobody_is_needed_any_more() {
        fate(10, 0, Fate.HANDED_OVER);
        decide(30, new Stimulus.Acknowledge(TANK, "ana", "link", Optional.empty()));
        fate(40, 0, Fate.REFUSED);

        assertThat(notice().state()).isEqualTo(NoticeState.REFUSED);
        assertThat(notice().line()).isZero();
        assertThat(callout().kind()).isEqualTo(Callout.Kind.ANSWERED);
    }

    @Test
    void stays_delivered_whatever_is_said_afterwards() {
        fate(10, 0, Fate.HANDED_OVER);
        fate(20, 0, Fate.DELIVERED);
        fate(40, 0, Fate.REFUSED);

        assertThat(notice().state()).isEqualTo(NoticeState.DELIVERED);
    }

    @Test
    void begins_at_the_best_line_again_when_its_contact_is_called_again() {
        decide(30, new Stimulus.Overdue(notice().id(), 0));
        decide(300, new Stimulus.CalloutDue(callout().id()));

        assertThat(picture.notices()).hasSize(1);
        assertThat(notice().line()).isZero();
    }

    @Test
    void changes_its_line_at_once_when_the_carrier_goes_down() {
        decide(10, new Stimulus.Carrier("sms-mail", true, "421 busy"));

        assertThat(notice().line()).isEqualTo(1);
    }

    @Test
    void is_refused_when_the_only_other_carrier_is_down_and_the_next_rung_is_called_at_once() {
        decide(5, new Stimulus.Carrier("mail", true, "421 busy"));
        fate(10, 0, Fate.REFUSED);

        assertThat(notice().state()).isEqualTo(NoticeState.REFUSED);
        assertThat(callout().place().rung()).isPositive();
    }

    @Test
    void waits_and_others_are_called_when_all_its_carriers_go_down() {
        decide(10, new Stimulus.Carrier("sms-mail", true, "421 busy"));
        decide(20, new Stimulus.Carrier("mail", true, "421 busy"));

        assertThat(notice().state()).isEqualTo(NoticeState.HELD);
        assertThat(notice().line()).isZero();
        assertThat(callout().kind()).isEqualTo(Callout.Kind.HELD);
        assertThat(callout().facts().held()).containsKey("ana");
        assertThat(picture.queued("mail")).isEmpty();
        assertThat(picture.notices()).hasSize(1);
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
