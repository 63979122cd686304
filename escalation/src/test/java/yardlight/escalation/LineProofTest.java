package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.theSetup;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Line;

/** What shows that Ana's two lines work: the texts by e-mail first, the mail second. */
class LineProofTest {

    private static final String NOON = "2026-11-25T12:00";

    private final Play play =
            new Play(theSetup(), notice -> Optional.of("https://yl.example/a/0123456789012345678901"));

    @Test
    void a_test_goes_by_exactly_its_line_and_says_what_it_is_and_how_to_answer() {
        test(NOON, 1);

        assertThat(play.last().line()).isEqualTo(1);
        assertThat(play.last().purpose()).isEqualTo(Purpose.TEST);
        assertThat(play.last().text())
                .isEqualTo("Yardlight test, no alarm: this is line 2 (mail). Reply OK 2"
                        + " or https://yl.example/a/0123456789012345678901");
        assertThat(play.log).contains("owner tests line 2 by mail");
    }

    @Test
    void a_test_that_is_refused_goes_by_no_other_line() {
        test(NOON, 0);
        play.fate("2026-11-25T12:01", play.last(), Stimulus.Fate.REFUSED);

        assertThat(play.last().state()).isEqualTo(NoticeState.REFUSED);
        assertThat(play.picture.notices()).hasSize(1);
        assertThat(play.line("ana", 0).trouble().orElseThrow().words()).isEqualTo("in the carrier's words");
        assertThat(play.line("ana", 0).proven(Fixtures.at(NOON))).isFalse();
    }

    @Test
    void a_test_that_nobody_takes_in_time_waits_for_its_own_line() {
        test(NOON, 0);
        play.at("2026-11-25T12:01", new Stimulus.Overdue(play.last().id(), 0));

        assertThat(play.last().line()).isZero();
        assertThat(play.last().state()).isEqualTo(NoticeState.QUEUED);
    }

    @Test
    void a_test_whose_carrier_goes_down_is_given_up() {
        test(NOON, 0);
        play.at("2026-11-25T12:01", new Stimulus.Carrier("sms-mail", true, "gone"));

        assertThat(play.last().state()).isEqualTo(NoticeState.REFUSED);
    }

    @Test
    void nobody_can_be_flooded_with_tests() {
        assertThat(test(NOON, 0)).isInstanceOf(Answer.Done.class);

        assertThat(refusal(test("2026-11-25T12:09:59", 0)))
                .isEqualTo("this line was tested a moment ago; it can be tested again at 2026-11-25T18:10:00Z");
        assertThat(test("2026-11-25T12:09:59", 1)).isInstanceOf(Answer.Done.class);
        assertThat(test("2026-11-25T12:10", 0)).isInstanceOf(Answer.Done.class);
    }

    @Test
    void their_limit_of_texts_counts_tests_too() {
        play.setup("2026-11-25T11:00", Play.with(ana(1, Fixtures.ana().lines()), false));

        test(NOON, 0);

        assertThat(refusal(test("2026-11-25T12:30", 1)))
                .isEqualTo("they have had as many texts as their limit allows for now");
    }

    @Test
    void nobody_is_woken_by_a_test() {
        assertThat(refusal(test("2026-11-25T02:00", 0))).isEqualTo("they have quiet hours until 2026-11-25T12:00:00Z");
        assertThat(play.picture.notices()).isEmpty();
    }

    @Test
    void a_line_that_is_down_or_not_there_is_not_tested() {
        play.at(NOON, new Stimulus.Carrier("sms-mail", true, "gone"));

        assertThat(refusal(test(NOON, 0))).isEqualTo("sms-mail is down; nothing goes out by it");
        assertThat(refusal(test(NOON, 2))).isEqualTo("there is no such line: ana, line 3");
    }

    @Test
    void a_line_that_was_stopped_is_not_tested() {
        String address = Fixtures.ana().lines().get(0).address();
        play.at(NOON, new Stimulus.Stopped("ana", address, true, "Ana Ruelas wrote STOP"));

        assertThat(refusal(test("2026-11-25T12:30", 0))).startsWith("they want nothing more by this line");
        assertThat(test("2026-11-25T12:30", 1)).isInstanceOf(Answer.Done.class);
    }

    @Test
    void the_code_in_an_answer_proves_the_line_that_it_was_sent_by_whatever_line_the_answer_came_by() {
        test(NOON, 0);
        test(NOON, 1);
        Answer answer = replied("2026-11-25T12:05", List.of(0), List.of(2));

        assertThat(answer).isEqualTo(new Answer.Tested(List.of(1)));
        assertThat(play.line("ana", 1).answeredAt()).contains(Fixtures.at("2026-11-25T12:05"));
        assertThat(play.line("ana", 0).provenAt()).isEmpty();
        assertThat(play.log).contains("line by mail proven by the answer to its test");
    }

    @Test
    void the_button_behind_the_link_of_a_test_proves_it_also_after_the_lines_changed_places() {
        test(NOON, 1);
        List<Line> lines = Fixtures.ana().lines();
        play.setup("2026-11-25T12:01", Play.with(ana(20, List.of(lines.get(1), lines.get(0))), false));

        play.at("2026-11-25T12:05", new Stimulus.AnswerNotice(play.last().id(), "link"));

        assertThat(play.line("ana", 0).answeredAt()).isPresent();
        assertThat(play.line("ana", 1).answeredAt()).isEmpty();
    }

    @Test
    void a_code_that_no_open_test_has_proves_nothing() {
        test(NOON, 0);
        play.fate("2026-11-25T12:00:01", play.last(), Stimulus.Fate.HANDED_OVER);

        replied("2026-11-25T12:05", List.of(0), List.of(7));
        replied("2026-11-26T12:05", List.of(0), List.of(1));

        assertThat(play.line("ana", 0).provenAt()).isEmpty();
    }

    @Test
    void a_receipt_proves_a_line_and_that_it_was_taken_does_not() {
        Notice notice = called();
        play.fate("2026-11-25T12:00:01", notice, Stimulus.Fate.HANDED_OVER);
        assertThat(play.line("ana", 0).handedOverAt()).isPresent();
        assertThat(play.line("ana", 0).provenAt()).isEmpty();

        play.fate("2026-11-25T12:00:09", notice, Stimulus.Fate.DELIVERED);
        assertThat(play.line("ana", 0).proven(Fixtures.at(NOON))).isTrue();
        assertThat(play.log).contains("line by sms-mail proven by a receipt");
    }

    @Test
    void what_is_proven_anyway_is_no_news_for_the_log() {
        Notice notice = called();
        play.fate("2026-11-25T12:00:09", notice, Stimulus.Fate.DELIVERED);
        play.fate("2026-11-25T12:00:10", notice, Stimulus.Fate.DELIVERED);

        assertThat(play.log.stream().filter("line by sms-mail proven by a receipt"::equals))
                .hasSize(1);
    }

    @Test
    void a_reply_proves_the_line_by_which_the_last_text_got_to_that_address() {
        Notice notice = called();
        play.fate("2026-11-25T12:00:01", notice, Stimulus.Fate.HANDED_OVER);

        replied("2026-11-25T12:05", List.of(0, 1), List.of(47));

        assertThat(play.line("ana", 0).answeredAt()).isPresent();
        assertThat(play.line("ana", 1).answeredAt()).isEmpty();
    }

    @Test
    void a_reply_out_of_the_blue_or_from_another_address_proves_nothing() {
        replied(NOON, List.of(0), List.of());
        Notice notice = called();
        play.fate("2026-11-25T12:00:01", notice, Stimulus.Fate.HANDED_OVER);
        replied("2026-11-25T12:05", List.of(1), List.of(47));
        replied("2026-11-26T12:00:01", List.of(0), List.of(47));

        assertThat(play.line("ana", 0).provenAt()).isEmpty();
        assertThat(play.line("ana", 1).provenAt()).isEmpty();
    }

    @Test
    void a_link_that_can_have_come_by_one_line_only_proves_it() {
        play.at(NOON, new Stimulus.LinkUsed("ana", 1));

        assertThat(play.line("ana", 1).answeredAt()).contains(Fixtures.at(NOON));
    }

    @Test
    void what_is_put_off_is_trouble_in_the_carriers_own_words() {
        Notice notice = called();
        play.at("2026-11-25T12:00:01", new Stimulus.PutOff(notice.id(), 0, "sms-mail: 451 try later"));

        assertThat(play.line("ana", 0).trouble().orElseThrow().words()).isEqualTo("sms-mail: 451 try later");
        assertThat(play.last().state()).isEqualTo(NoticeState.QUEUED);
    }

    @Test
    void another_address_begins_anew() {
        play.at(NOON, new Stimulus.LinkUsed("ana", 0));
        play.setup(
                "2026-11-25T12:01", Play.with(ana(20, List.of(new Line("sms-mail", "5755550109@txt.example"))), false));

        assertThat(play.line("ana", 0).provenAt()).isEmpty();
    }

    private Notice called() {
        Report report = new Report(
                TANK,
                Optional.of("mesa-9-box"),
                true,
                Optional.of(Priority.CRITICAL),
                Fixtures.measured("18.4", "18.0", "ft"),
                Fixtures.at(NOON),
                false);
        play.at(NOON, new Stimulus.Reported("mesa-9-box", List.of(report)));
        return play.last();
    }

    private Answer test(String local, int line) {
        return play.at(local, new Stimulus.TestLine("ana", line, "owner"));
    }

    private Answer replied(String local, List<Integer> lines, List<Integer> codes) {
        return play.at(local, new Stimulus.Replied("ana", lines, codes));
    }

    private static String refusal(Answer answer) {
        return ((Answer.Refusal) answer).reason();
    }

    private static Contact ana(int textsPerHour, List<Line> lines) {
        Contact ana = Fixtures.ana();
        return new Contact("ana", ana.name(), ana.zone(), ana.language(), lines, List.of(), textsPerHour);
    }
}
