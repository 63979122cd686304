package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.proof.AllsWell;
import yardlight.escalation.setup.Language;

/** Mornings on which the gateway was away when Ana wanted to hear that all is well. */
class AllsWellAfterAbsenceTest {

    private static final AllsWell AT_SEVEN = AllsWell.daily(LocalTime.of(7, 0), Fixtures.CHICAGO);
    private static final Stimulus DUE = new Stimulus.AllsWellDue("ana");

    @Test
    void boxes_are_heard_first() {
        Play play = new Play(Fixtures.theSetup()).setup("2026-11-25T06:00", Play.told(AT_SEVEN, Language.EN, true));
        play.at("2026-11-25T06:50", new Stimulus.Beat("mesa-9-box", Heartbeat.BARE));

        play.at("2026-11-25T08:00", DUE);

        assertThat(play.picture.notices()).isEmpty();
        assertThat(play.next("ana")).contains(Fixtures.at("2026-11-25T08:05"));
        play.at("2026-11-25T08:01", new Stimulus.Beat("mesa-9-box", Heartbeat.BARE));
        play.at("2026-11-25T08:03:59", new Stimulus.Beat("mesa-9-box", Heartbeat.BARE));
        play.at("2026-11-25T08:05", DUE);
        assertThat(play.last().text())
                .startsWith("The site is reporting, 0 in alarm. Wed 8:05 AM (late, due Wed 7:00 AM).");
    }

    /** Its deadline was put off then, and still nobody knows whether it lives. */
    @Test
    void a_box_that_is_not_heard_does_not_count_as_reporting() {
        Play play = new Play(Fixtures.theSetup()).setup("2026-11-25T06:00", Play.told(AT_SEVEN, Language.EN, true));
        play.at("2026-11-25T06:50", new Stimulus.Beat("mesa-9-box", Heartbeat.BARE));

        play.at("2026-11-25T08:00", new Stimulus.BoxDue("mesa-9-box", Fixtures.at("2026-11-25T08:00")));
        play.at("2026-11-25T08:00", DUE);
        assertThat(play.picture.notices()).isEmpty();

        play.at("2026-11-25T08:05", new Stimulus.BoxDue("mesa-9-box", Fixtures.at("2026-11-25T08:04")));
        play.at("2026-11-25T08:05", DUE);
        assertThat(play.last().text()).doesNotContain("site is reporting");
    }
}
