package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.at;
import static yardlight.escalation.Fixtures.theSetup;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.SignIn;

/** Somebody signed in with something new. Ana is quiet from 21:00 to 06:00 and has two lines, Ben has one and is never quiet. */
class SignInsScenarioTest {

    private static final String NOON = "2026-11-25T12:00";

    private final Play play = new Play(theSetup());

    @Test
    void are_told_in_one_text_two_minutes_later_with_what_to_do() {
        signedIn(NOON, "ana", "ana");
        assertThat(sent()).isEmpty();

        desk("2026-11-25T12:02", "ana");

        assertThat(sent())
                .containsExactly("ana Yardlight, no alarm: ana signed in with a new browser from 198.51.100.7,"
                        + " Wed 12:00 PM. Not you? Change your password.");
        assertThat(play.last().purpose()).isEqualTo(Purpose.SIGN_IN);
        assertThat(play.log).contains("ana signed in");
    }

    @Test
    void are_told_to_others_in_other_words_and_to_nobody_who_is_not_there() {
        signedIn(NOON, "ana", "ana", "ben", "carl");
        desk("2026-11-25T12:02", "ben");

        assertThat(sent())
                .containsExactly("ben Yardlight, no alarm: ana signed in with a new browser from 198.51.100.7,"
                        + " Wed 12:00 PM. Not known to you? End their sessions.");
    }

    @Test
    void several_are_one_text() {
        signedIn(NOON, "ana", "ben");
        signedIn(NOON, "ana", "ben");
        signedIn("2026-11-25T12:01", "ana", "ben");

        desk("2026-11-25T12:02", "ben");

        assertThat(sent())
                .singleElement()
                .asString()
                .endsWith("Wed 12:01 PM. Not known to you? End their sessions. And 2 more.");
        assertThat(play.picture.desk("ben").news().waiting()).isEmpty();
    }

    @Test
    void wake_nobody() {
        signedIn("2026-11-25T23:00", "ana", "ana");

        desk("2026-11-25T23:02", "ana");
        assertThat(sent()).isEmpty();
        assertThat(play.picture.desk("ana").dueAt()).contains(at("2026-11-26T06:00"));

        desk("2026-11-26T06:00", "ana");
        assertThat(sent()).singleElement().asString().contains("Wed 11:00 PM");
    }

    @Test
    void have_the_room_that_is_left_of_the_limit_of_texts() {
        Contact ben = Fixtures.ben();
        var one = new Contact("ben", ben.name(), ben.zone(), ben.language(), ben.lines(), ben.quiet(), 1);
        play.setup("2026-11-25T11:00", setup(List.of(Fixtures.ana(), one)));
        play.at("2026-11-25T11:30", new Stimulus.TestLine("ben", 0, "owner"));
        signedIn(NOON, "ana", "ben");

        desk("2026-11-25T12:02", "ben");
        assertThat(sent()).hasSize(1);
        assertThat(play.picture.desk("ben").dueAt()).contains(at("2026-11-25T12:30"));

        desk("2026-11-25T12:30", "ben");
        assertThat(sent()).hasSize(2);
    }

    @Test
    void take_the_next_line_when_one_refuses_and_wait_when_no_carrier_works() {
        signedIn(NOON, "ana", "ana");
        desk("2026-11-25T12:02", "ana");

        play.fate("2026-11-25T12:03", play.last(), Stimulus.Fate.REFUSED);
        assertThat(play.last().line()).isEqualTo(1);

        play.at("2026-11-25T12:04", new Stimulus.Carrier("sms-mail", true, "gone"));
        play.at("2026-11-25T12:04", new Stimulus.Carrier("mail", true, "gone"));
        Notice waits = play.last();
        assertThat(waits.state()).isEqualTo(NoticeState.HELD);

        play.at("2026-11-25T12:05", new Stimulus.Carrier("mail", false, "back"));
        play.at(at("2026-11-25T12:30"), new Stimulus.DeskDue("ana"));
        assertThat(play.picture.notice(waits.id()).orElseThrow().text()).contains("198.51.100.7");
    }

    @Test
    void are_given_up_when_the_contact_is_gone_and_after_a_week() {
        signedIn(NOON, "ana", "ana", "ben");
        play.setup("2026-11-25T12:01", setup(List.of(Fixtures.ana())));

        desk("2026-11-25T12:02", "ben");
        play.at(at(NOON).plus(Duration.ofDays(7)), new Stimulus.DeskDue("ana"));

        assertThat(sent()).isEmpty();
        assertThat(play.picture.notices()).extracting(Notice::state).containsOnly(NoticeState.CANCELLED);
    }

    private static Setup setup(List<Contact> contacts) {
        return new Setup(
                List.of(Fixtures.aSite()),
                List.of(Fixtures.aBox()),
                List.of(Fixtures.waterTank(), Fixtures.injectionPump()),
                contacts,
                List.of(),
                List.of());
    }

    private void signedIn(String local, String login, String... contacts) {
        play.at(
                local,
                new Stimulus.SignedIn(
                        new SignIn(login, false, "198.51.100.7"),
                        Optional.of(login),
                        Set.of(contacts),
                        login + " signed in"));
    }

    private void desk(String local, String contact) {
        play.at(local, new Stimulus.DeskDue(contact));
    }

    private List<String> sent() {
        return play.picture.notices().stream()
                .filter(notice -> notice.state() != NoticeState.HELD && notice.state() != NoticeState.BUNDLED)
                .filter(notice -> notice.state() != NoticeState.CANCELLED)
                .map(notice -> notice.contact() + " " + notice.text())
                .toList();
    }
}
