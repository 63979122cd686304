package yardlight.gateway.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpMethod;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.PreparedStatementSetter;
import org.springframework.test.web.servlet.assertj.MockMvcTester.MockMvcRequestBuilder;
import yardlight.db.columns.AlarmColumns;
import yardlight.escalation.Answer;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.sentence.Sentence;
import yardlight.gateway.Doors;
import yardlight.gateway.FakeLane;
import yardlight.gateway.GatewayTest;

/** What the buttons of an alarm's page do, and what comes back when they do nothing. */
@GatewayTest
class StoryPageTest {

    private static final String PAGE = "/alarms/mesa-9.well-3.high.1";

    private final Doors doors;
    private final FakeLane lane;
    private final JdbcTemplate jdbc;

    StoryPageTest(Doors doors, FakeLane lane, JdbcTemplate jdbc) {
        this.doors = doors;
        this.lane = lane;
        this.jdbc = jdbc;
    }

    @BeforeEach
    void an_alarm_that_nobody_has() {
        lane.clear();
        Alarm alarm = Alarm.normal(new AlarmKey("mesa-9", "well-3", "high"))
                .draft()
                .occurrence(1)
                .active(true)
                .state(AlarmState.UNACKNOWLEDGED)
                .occurredAt(Optional.of(Fixtures.at("2026-11-25T02:00")))
                .done();
        PreparedStatementSetter row =
                statement -> AlarmColumns.TABLE.bindInsert(statement, new AlarmColumns.Occurrence(alarm, true));
        jdbc.update(AlarmColumns.TABLE.insert(), row);
    }

    @AfterEach
    void forget() {
        jdbc.update("delete from alarm where id = 'mesa-9.well-3.high.1'");
    }

    private MockMvcRequestBuilder post(String button) {
        return doors.as("hand", HttpMethod.POST, PAGE + button).accept("text/html");
    }

    @Test
    void show_a_reader_how_it_stands_and_no_button() {
        assertThat(doors.as("reader", HttpMethod.GET, PAGE).accept("text/html").exchange())
                .hasStatusOk()
                .bodyText()
                .contains("WELL 3 high", "Nobody has it")
                .doesNotContain("I have it", "Put it aside", "Write a note");
        assertThat(doors.as("hand", HttpMethod.GET, PAGE).accept("text/html").exchange())
                .bodyText()
                .contains("I have it", "Put it aside", "Write a note");
    }

    @Test
    void put_it_aside_for_as_long_and_with_the_reason_that_was_typed() {
        assertThat(post("/shelve")
                        .param("for", "PT4H")
                        .param("reason", " welding\nnear it ")
                        .exchange())
                .hasStatus(303);

        assertThat(lane.decided)
                .containsExactly(new Stimulus.Shelve(
                        new AlarmKey("mesa-9", "well-3", "high"), Duration.ofHours(4), "welding near it", "hand"));
    }

    @Test
    void keep_what_was_typed_and_say_beside_the_field_what_is_wrong() {
        assertThat(post("/shelve").param("for", "PT4H").param("reason", " ").exchange())
                .hasStatus(422)
                .bodyText()
                .contains("Say something here.", "<option value=\"PT4H\" selected=\"selected\">");
        assertThat(post("/shelve")
                        .param("for", "P99D")
                        .param("reason", "welding")
                        .exchange())
                .hasStatus(422)
                .bodyText()
                .contains("Choose one of these.", "value=\"welding\"");
        assertThat(post("/notes").param("note", "x".repeat(201)).exchange())
                .hasStatus(422)
                .bodyText()
                .contains("200 characters at most.", "x".repeat(201));
        assertThat(lane.decided).isEmpty();
    }

    @Test
    void show_why_the_rules_refuse() {
        lane.answer = new Answer.Refusal("cannot shelve an alarm that is normal");

        assertThat(post("/shelve")
                        .param("for", "PT2H")
                        .param("reason", "welding")
                        .exchange())
                .hasStatus(409)
                .bodyText()
                .contains("That was not done:", "cannot shelve an alarm that is normal", "value=\"welding\"");
        assertThat(post("/acknowledge").exchange()).hasStatus(409).bodyText().contains("That was not done:");
    }

    @Test
    void show_why_the_rules_refuse_in_the_language_of_the_reader() {
        lane.answer = new Answer.Refusal(
                Sentence.of("cannot", "cannot shelve an alarm that is normal: a/b", "shelve", "normal", "a/b"));

        assertThat(post("/shelve")
                        .header("Accept-Language", "es")
                        .param("for", "PT2H")
                        .param("reason", "soldando")
                        .exchange())
                .hasStatus(409)
                .bodyText()
                .contains("no se puede aplazar una alarma que está normal: a/b");
    }

    @Test
    void lead_back_to_where_the_button_was_pressed() {
        assertThat(post("/acknowledge").exchange()).hasStatus(303).hasHeader("Location", "/");
        assertThat(post("/acknowledge").param("from", "alarm").exchange())
                .hasStatus(303)
                .hasHeader("Location", PAGE);
    }

    @Test
    void keep_a_note_in_the_log_and_tell_it_in_the_story() {
        assertThat(post("/notes").param("note", "the float switch sticks").exchange())
                .hasStatus(303);

        assertThat(doors.as("reader", HttpMethod.GET, PAGE).accept("text/html").exchange())
                .bodyText()
                .contains("Note by hand: the float switch sticks");
    }
}
