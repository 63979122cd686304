package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.CHICAGO;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.theSetup;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.proof.AllsWell;
import yardlight.escalation.rehearsal.Rehearsal;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Setup;

/** Mornings on which Ana wants to hear that all is well, and days on which not all is. */
class AllsWellScenarioTest {

    private static final AllsWell AT_SEVEN = AllsWell.daily(LocalTime.of(7, 0), CHICAGO);
    private static final String LINES = " Not proven for 30 days: line 1 (sms-mail), line 2 (mail).";
    private static final Stimulus DUE = new Stimulus.AllsWellDue("ana");

    @Test
    void it_comes_each_day_at_its_time() {
        Night night = new Night(theSetup()).setup("2026-11-24T08:00", calm()).run("2026-11-27T12:00");

        assertThat(night.calls()).containsExactly("07:00:00 ana", "07:00:00 ana", "07:00:00 ana");
        assertThat(night.texts().get(0).words())
                .isEqualTo("No site sends heartbeats, 0 in alarm. Wed 7:00 AM." + LINES);
    }

    @Test
    void it_comes_on_its_days_only() {
        var mondays = new AllsWell(LocalTime.of(7, 0), CHICAGO, Set.of(DayOfWeek.MONDAY));
        Night night = new Night(theSetup())
                .setup("2026-11-23T08:00", Play.told(mondays, Language.EN, false))
                .run("2026-12-08T12:00");

        assertThat(night.texts())
                .extracting(Night.Text::at)
                .containsExactly(Fixtures.at("2026-11-30T07:00"), Fixtures.at("2026-12-07T07:00"));
    }

    /** The clock goes forward on 8 March 2026 at 2:00 and back on 1 November at 2:00. */
    @ParameterizedTest
    @CsvSource({
        "02:30, 2026-03-07T00:00, 2026-03-10T00:00, '02:30:00 ana, 03:00:00 ana, 02:30:00 ana'",
        "07:00, 2026-03-07T00:00, 2026-03-10T00:00, '07:00:00 ana, 07:00:00 ana, 07:00:00 ana'",
        "01:30, 2026-10-31T00:00, 2026-11-03T00:00, '01:30:00 ana, 01:30:00 ana, 01:30:00 ana'",
        "07:00, 2026-10-31T00:00, 2026-11-03T00:00, '07:00:00 ana, 07:00:00 ana, 07:00:00 ana'"
    })
    void it_comes_once_on_the_days_on_which_the_clock_changes(LocalTime at, String from, String to, String calls) {
        Night night = new Night(theSetup())
                .setup(from, Play.told(AllsWell.daily(at, CHICAGO), Language.EN, false))
                .run(to);

        assertThat(String.join(", ", night.calls())).isEqualTo(calls);
    }

    @Test
    void neither_quiet_hours_nor_their_limit_hold_it() {
        AllsWell early = AllsWell.daily(LocalTime.of(5, 0), CHICAGO);
        Contact ana = Fixtures.ana();
        var bothered = new Contact(
                "ana", ana.name(), ana.zone(), Language.EN, ana.lines(), ana.quiet(), 1, Optional.of(early));
        Night night = new Night(theSetup())
                .setup("2026-11-25T04:00", Play.with(bothered, false))
                .active("2026-11-25T04:55", TANK, Priority.HIGH)
                .run("2026-11-25T05:00");

        assertThat(night.calls()).containsExactly("04:55:00 ana", "05:00:00 ana");
    }

    @Test
    void it_counts_in_the_limit_of_texts() {
        Contact ana = Fixtures.ana();
        var bothered = new Contact(
                "ana", ana.name(), ana.zone(), Language.EN, ana.lines(), List.of(), 1, Optional.of(AT_SEVEN));
        Night night = new Night(theSetup())
                .setup("2026-11-25T06:00", Play.with(bothered, false))
                .active("2026-11-25T07:01", TANK, Priority.HIGH)
                .run("2026-11-25T07:02");

        assertThat(night.calls()).containsExactly("07:00:00 ana");
    }

    @Test
    void nobody_has_to_answer_it_so_it_holds_no_call_back() {
        Night night = new Night(theSetup())
                .setup("2026-11-25T06:00", calm())
                .active("2026-11-25T07:00:10", TANK)
                .active("2026-11-25T07:00:20", new AlarmKey("mesa-9", "separator", "low"), Priority.HIGH)
                .run("2026-11-25T07:00:30");

        assertThat(night.calls()).containsExactly("07:00:00 ana", "07:00:10 ana", "07:00:20 ana");
    }

    @Test
    void what_is_wrong_is_said_first() {
        Play play = new Play(theSetup()).setup("2026-11-25T06:00", told(Language.EN));
        play.at(
                "2026-11-25T06:30",
                new Stimulus.Reported("mesa-9-box", List.of(Fixtures.active(TANK, Fixtures.at("2026-11-25T06:30")))));
        play.at("2026-11-25T06:59:59", new Stimulus.Beat("mesa-9-box", Heartbeat.BARE));
        play.at("2026-11-25T07:00", DUE);

        assertThat(play.last().text())
                .isEqualTo("1 in alarm: MESA 9 WATER TANK HIGH-HIGH. The site is reporting. Wed 7:00 AM." + LINES);
    }

    @Test
    void a_site_that_is_silent_is_said_first_also_when_it_was_never_heard() {
        Play play = new Play(theSetup()).setup("2026-11-25T06:00", told(Language.EN));
        play.at("2026-11-25T07:00", DUE);

        assertThat(play.last().text()).isEqualTo("The site is silent: MESA 9. 0 in alarm. Wed 7:00 AM." + LINES);
    }

    @Test
    void it_is_in_the_language_of_its_reader() {
        Play play = new Play(theSetup()).setup("2026-11-25T06:00", told(Language.ES));
        play.at("2026-11-25T06:59:59", new Stimulus.Beat("mesa-9-box", Heartbeat.BARE));
        play.at("2026-11-25T07:00", DUE);

        assertThat(play.last().text())
                .isEqualTo("El sitio reporta, 0 en alarma. mié 7:00 AM."
                        + " Sin prueba en 30 dias: linea 1 (sms-mail), linea 2 (mail).");
    }

    @Test
    void what_was_proven_is_said_and_no_longer_named() {
        Play play = new Play(theSetup()).setup("2026-11-24T06:00", told(Language.EN));
        play.at("2026-11-24T07:00", DUE);
        play.fate("2026-11-24T07:00:02", play.last(), Stimulus.Fate.DELIVERED);
        play.at("2026-11-25T06:59:59", new Stimulus.Beat("mesa-9-box", Heartbeat.BARE));
        play.at("2026-11-25T07:00", DUE);

        assertThat(play.last().text())
                .isEqualTo("The site is reporting, 0 in alarm. Wed 7:00 AM."
                        + " Not proven for 30 days: line 2 (mail). Line 1 (sms-mail) proven yesterday.");
    }

    @Test
    void asked_for_twice_it_is_sent_once() {
        Play play = new Play(theSetup()).setup("2026-11-25T06:00", calm());

        play.at("2026-11-25T07:00", DUE);
        play.at("2026-11-25T07:00", DUE);
        play.at("2026-11-25T07:00:01", DUE);

        assertThat(play.picture.notices()).hasSize(1);
        assertThat(play.next("ana")).contains(Fixtures.at("2026-11-26T07:00"));
    }

    @Test
    void missed_by_less_than_four_hours_it_comes_and_says_so() {
        Play play = new Play(theSetup()).setup("2026-11-25T06:00", calm());
        play.at("2026-11-25T10:59", DUE);

        assertThat(play.last().text()).contains(" Wed 10:59 AM (late, due Wed 7:00 AM).");
        assertThat(play.next("ana")).contains(Fixtures.at("2026-11-26T07:00"));
    }

    @Test
    void missed_by_more_it_does_not_come_and_the_log_says_so() {
        Play play = new Play(theSetup()).setup("2026-11-25T06:00", calm());
        play.at("2026-11-25T11:00", DUE);

        assertThat(play.picture.notices()).isEmpty();
        assertThat(play.log).contains("all's-well of 2026-11-25T13:00:00Z was missed: it is too late to send it");
        assertThat(play.next("ana")).contains(Fixtures.at("2026-11-26T07:00"));
    }

    @Test
    void of_several_that_were_missed_the_last_one_comes() {
        Play play = new Play(theSetup()).setup("2026-11-21T06:00", calm());
        play.at("2026-11-25T07:30", DUE);

        assertThat(play.picture.notices()).hasSize(1);
        assertThat(play.last().text()).contains("(late, due Wed 7:00 AM)");
    }

    @Test
    void a_line_that_refuses_it_hands_it_to_the_next() {
        Play play = new Play(theSetup()).setup("2026-11-25T06:00", calm());
        play.at("2026-11-25T07:00", DUE);
        play.fate("2026-11-25T07:00:01", play.last(), Stimulus.Fate.REFUSED);

        assertThat(play.last().line()).isEqualTo(1);
        assertThat(play.last().state()).isEqualTo(NoticeState.QUEUED);
    }

    @Test
    void what_a_receipt_takes_back_goes_by_the_next_line_while_it_is_of_use() {
        Play play = new Play(theSetup()).setup("2026-11-25T06:00", calm());
        play.at("2026-11-25T07:00", DUE);
        play.fate("2026-11-25T07:00:01", play.last(), Stimulus.Fate.HANDED_OVER);
        play.fate("2026-11-25T07:10", play.last(), Stimulus.Fate.REFUSED);
        assertThat(play.last().state()).isEqualTo(NoticeState.QUEUED);

        play.fate("2026-11-25T07:11", play.last(), Stimulus.Fate.HANDED_OVER);
        play.fate("2026-11-25T12:00", play.last(), Stimulus.Fate.REFUSED);
        assertThat(play.last().state()).isEqualTo(NoticeState.REFUSED);
    }

    @Test
    void without_a_carrier_it_is_written_anew_once_there_is_one() {
        Play play = new Play(theSetup()).setup("2026-11-25T06:00", calm());
        play.at("2026-11-25T07:00", DUE);
        play.at("2026-11-25T07:00:05", new Stimulus.Carrier("mail", true, "gone"));
        play.at("2026-11-25T07:00:06", new Stimulus.Carrier("sms-mail", true, "gone"));
        assertThat(play.picture.notices().get(0).state()).isEqualTo(NoticeState.CANCELLED);

        play.at("2026-11-25T07:05:06", DUE);
        play.at("2026-11-25T07:09:00", new Stimulus.Carrier("sms-mail", false, "back"));
        play.at("2026-11-25T07:10:06", DUE);

        assertThat(play.picture.notices().get(0).state()).isEqualTo(NoticeState.QUEUED);
        assertThat(play.picture.notices().get(0).text()).contains("Wed 7:10 AM");
    }

    @Test
    void another_time_counts_from_the_next_one_on_and_none_ends_it() {
        Play play = new Play(theSetup()).setup("2026-11-25T06:00", calm());
        play.setup("2026-11-25T06:30", Play.told(AllsWell.daily(LocalTime.of(6, 15), CHICAGO), Language.EN, false));
        assertThat(play.next("ana")).contains(Fixtures.at("2026-11-26T06:15"));

        play.setup("2026-11-25T06:40", theSetup());
        assertThat(play.next("ana")).isEmpty();
    }

    @Test
    void another_setup_with_the_same_time_forgets_none_that_was_missed() {
        Play play = new Play(theSetup()).setup("2026-11-25T06:00", calm());

        play.setup("2026-11-25T07:20", calm());
        play.at("2026-11-25T07:20", DUE);

        assertThat(play.last().text()).contains("late, due Wed 7:00 AM");
    }

    @Test
    void a_clock_that_was_set_back_brings_no_second_one() {
        Play play = new Play(theSetup()).setup("2026-11-25T06:00", calm());
        play.at("2026-11-25T07:00", DUE);
        play.fate("2026-11-25T07:00:01", play.last(), Stimulus.Fate.HANDED_OVER);
        play.setup("2026-11-25T06:10", theSetup());
        play.setup("2026-11-25T06:20", calm());

        play.at("2026-11-25T07:00", DUE);

        assertThat(play.picture.notices()).hasSize(1);
        assertThat(play.last().state()).isEqualTo(NoticeState.HANDED_OVER);
    }

    @Test
    void a_rehearsal_is_about_its_alarm_and_nothing_else() {
        var question = new Rehearsal.Question(
                TANK, Optional.empty(), Fixtures.at("2026-11-25T02:13"), Map.of("ana", Duration.ofHours(9)));

        assertThat(Rehearsal.of(calm(), question)).isEqualTo(Rehearsal.of(Play.with(Fixtures.ana(), false), question));
    }

    private static Setup calm() {
        return Play.told(AT_SEVEN, Language.EN, false);
    }

    private static Setup told(Language language) {
        return Play.told(AT_SEVEN, language, true);
    }
}
