package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.escalation.rehearsal.PastNights;
import yardlight.escalation.rehearsal.Season;
import yardlight.escalation.setup.Setup;

/** A night that was recorded and is played again with the same setup is the same night: that is what a replay is worth. */
class PastNightsAgainTest {

    private static final int NIGHTS = Integer.getInteger("yardlight.nights.again", 600);

    @Test
    void a_recorded_night_played_again_with_the_same_setup_sends_the_same_texts_and_gets_the_same_answers() {
        int texts = 0;
        int answers = 0;
        int unanswered = 0;
        int ties = 0;
        for (long seed = 0; seed < NIGHTS; seed++) {
            RecordedNight night = new RecordedNight(seed).play();
            Season really = Season.really(night.past());

            Season again = PastNights.play(night.setup(), night.past(), night.until(), Map.of(), Set.of())
                    .orElseThrow();

            assertThat(lines(really))
                    .as("the record of the night of seed " + seed)
                    .isEqualTo(night.sent());
            if (!callsOnceMore(night.setup())) {
                assertThat(lines(again)).as("texts, seed " + seed).isEqualTo(lines(really));
            }
            if (again.texts().equals(really.texts())) {
                assertThat(again.calls()).as("answers, seed " + seed).isEqualTo(really.calls());
            } else {
                ties++;
            }
            texts += really.texts().size();
            answers += (int) really.calls().stream()
                    .filter(call -> call.by().isPresent())
                    .count();
            unanswered += (int)
                    really.calls().stream().filter(call -> call.by().isEmpty()).count();
        }
        System.out.println(NIGHTS + " nights played again: " + texts + " texts, " + answers + " answered, " + unanswered
                + " unanswered; in " + ties
                + " of them something went first that was due together with something else");
        assertThat(texts).isGreaterThan(10 * NIGHTS);
        assertThat(answers).isGreaterThan(NIGHTS);
        assertThat(ties).isLessThan(NIGHTS / 100);
        assertThat(unanswered).isGreaterThan(NIGHTS);
    }

    /** Alarms that were answered in one go are due once more in one moment, and which of them is first the record does not say. */
    private static boolean callsOnceMore(Setup setup) {
        return setup.points().stream()
                .anyMatch(point -> point.timing().realarm().isPresent());
    }

    private static List<String> lines(Season season) {
        return season.texts().stream()
                .map(text -> text.at() + " " + text.contact())
                .sorted()
                .toList();
    }
}
