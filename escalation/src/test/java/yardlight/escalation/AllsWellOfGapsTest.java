package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.proof.AllsWell;
import yardlight.escalation.setup.Language;
import yardlight.escalation.wording.Wellbeing;

class AllsWellOfGapsTest {

    private static final AllsWell AT_SEVEN = AllsWell.daily(LocalTime.of(7, 0), Fixtures.CHICAGO);
    private static final String CALM = "No site sends heartbeats, 0 in alarm. Wed 7:00 AM."
            + " Not proven for 30 days: line 1 (sms-mail), line 2 (mail).";

    /** Worked out beforehand and handed in: to look 400 days ahead would keep the engine from what boxes say. */
    @Test
    void it_says_when_nobody_would_be_called() {
        var uncovered = new Wellbeing.Uncovered(
                Fixtures.aSite(),
                Set.of(Priority.LOW, Priority.MEDIUM),
                Fixtures.at("2026-11-28T21:00"),
                Fixtures.at("2026-11-29T06:00"),
                41);

        assertThat(text(new Stimulus.AllsWellDue("ana", Optional.of(uncovered))))
                .isEqualTo(CALM + " 42 gaps ahead.");
        assertThat(text(new Stimulus.AllsWellDue("ana"))).isEqualTo(CALM);
    }

    private static String text(Stimulus due) {
        Play play = new Play(Fixtures.theSetup()).setup("2026-11-25T06:00", Play.told(AT_SEVEN, Language.EN, false));
        play.at("2026-11-25T07:00", due);
        return play.last().text();
    }
}
