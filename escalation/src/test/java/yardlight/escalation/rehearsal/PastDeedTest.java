package yardlight.escalation.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.rehearsal.PastDeed.What;

/** What is read from the log's own words. */
class PastDeedTest {

    private static final Instant AT = Instant.parse("2026-11-25T08:13:00Z");
    private static final Map<String, String> ABOUT = Map.of("site", "mesa-9", "alarm", "mesa-9.water-tank.high-high.3");
    private static final AlarmKey KEY = new AlarmKey("mesa-9", "water-tank", "high-high");

    @Test
    void a_state_says_whether_the_condition_holds() {
        assertThat(alarm("is now unacknowledged, chattering")).containsExactly(deed(What.BEGAN, ""));
        assertThat(alarm("is now returned-unacknowledged, fleeting")).containsExactly(deed(What.ENDED, ""));
        assertThat(alarm("is now latched-acknowledged")).containsExactly(deed(What.ENDED, ""));
        assertThat(alarm("is now acknowledged")).containsExactly(deed(What.KNOWN, ""));
        assertThat(alarm("is now suppressed-by-design")).isEmpty();
    }

    @Test
    void an_answer_says_whose_it_is_whatever_else_they_wrote() {
        assertThat(answer("acknowledged by ben by text: gate is open, is now ok, is now acknowledged"))
                .containsExactly(deed(What.ANSWERED, "ben"));
        assertThat(answer("acknowledged with water-tank/high by ben, is now normal"))
                .containsExactly(deed(What.ANSWERED_WITH, "ben"));
        assertThat(answer("reset by owner, is now normal")).containsExactly(deed(What.RESET, "owner"));
    }

    @Test
    void a_shelf_has_its_length_and_its_reason() {
        assertThat(answer("shelved by ben for PT2H: work: valve, is now shelved"))
                .containsExactly(new PastDeed(
                        AT, KEY, ABOUT.get("alarm"), What.SHELVED, "ben", Duration.ofHours(2), "work: valve"));
    }

    @Test
    void who_takes_it_off_the_shelf_shows_what_it_is_now() {
        assertThat(answer("unshelved by ben, is now unacknowledged"))
                .containsExactly(deed(What.UNSHELVED, "ben"), deed(What.BEGAN, ""));
    }

    @Test
    void everything_else_tells_nothing() {
        assertThat(PastDeed.read(AT, "event", ABOUT, "water-tank/high-high active: occurred"))
                .isEmpty();
        assertThat(PastDeed.read(AT, "answer", ABOUT, "water-tank/high-high note by ben: gauged by hand"))
                .isEmpty();
        assertThat(PastDeed.read(AT, "alarm", Map.of("site", "mesa-9"), "water-tank/high-high is now normal"))
                .isEmpty();
    }

    private static List<PastDeed> alarm(String words) {
        return PastDeed.read(AT, "alarm", ABOUT, "water-tank/high-high " + words);
    }

    private static List<PastDeed> answer(String words) {
        return PastDeed.read(AT, "answer", ABOUT, "water-tank/high-high " + words);
    }

    private static PastDeed deed(What what, String by) {
        return new PastDeed(AT, KEY, ABOUT.get("alarm"), what, by, Duration.ZERO, "");
    }
}
