package yardlight.gateway.lines;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;
import yardlight.escalation.sentence.Sentence;
import yardlight.gateway.Doors;
import yardlight.gateway.FakeLane;
import yardlight.gateway.GatewayTest;

/** Ana's two lines as they are shown before anything is known of them, and the button that tries one. */
@GatewayTest
class LinesTest {

    private final Doors doors;
    private final FakeLane lane;

    LinesTest(Doors doors, FakeLane lane) {
        this.doors = doors;
        this.lane = lane;
    }

    @BeforeEach
    void clear() {
        lane.clear();
    }

    @Test
    void are_listed_with_their_contact_and_place() throws Exception {
        MvcTestResult answer =
                doors.as("hand", HttpMethod.GET, "/api/v1/lines?contact=ana").exchange();

        assertThat(answer).hasStatusOk();
        assertThat(answer.getResponse().getContentAsString())
                .isEqualTo(
                        "[{\"contact\":\"ana\",\"line\":1,\"channel\":\"sms-mail\",\"address\":\"5755550101@txt.example\",\"proven\":false},"
                                + "{\"contact\":\"ana\",\"line\":2,\"channel\":\"mail\",\"address\":\"ana@mesa.example\",\"proven\":false}]");
    }

    @Test
    void show_a_reader_no_whole_address() throws Exception {
        MvcTestResult answer =
                doors.as("reader", HttpMethod.GET, "/api/v1/lines").exchange();

        assertThat(answer.getResponse().getContentAsString())
                .contains("***0101@txt.example", "***@mesa.example", "***0102@txt.example")
                .doesNotContain("5755550101", "ana@");
    }

    @Test
    void a_hand_tries_the_second_one() {
        assertThat(doors.as("hand", HttpMethod.POST, "/api/v1/contacts/ana/lines/2/test")
                        .exchange())
                .hasStatus(202);
        assertThat(lane.decided).containsExactly(new Stimulus.TestLine("ana", 1, "hand"));
    }

    @Test
    void what_the_rules_refuse_is_a_conflict_with_the_reason() {
        lane.answer = new Answer.Refusal("they have quiet hours until 2026-11-25T12:00:00Z");

        assertThat(doors.as("hand", HttpMethod.POST, "/api/v1/contacts/ana/lines/1/test")
                        .exchange())
                .hasStatus(409)
                .bodyJson()
                .extractingPath("$.detail")
                .isEqualTo("they have quiet hours until 2026-11-25T12:00:00Z");
    }

    @ParameterizedTest
    @ValueSource(strings = {"ana/lines/3", "ana/lines/0", "ana/lines/x", "ana/lines/99999999999", "cleo/lines/1"})
    void a_line_that_is_not_there_is_not_found(String line) {
        assertThat(doors.as("hand", HttpMethod.POST, "/api/v1/contacts/" + line + "/test")
                        .exchange())
                .hasStatus(404);
        assertThat(lane.decided).isEmpty();
    }

    @Test
    void the_page_says_that_nothing_is_known_and_has_a_button_for_each() throws Exception {
        MvcTestResult page = doors.as("hand", HttpMethod.GET, "/people/ana").exchange();

        assertThat(page).hasStatusOk();
        assertThat(page.getResponse().getContentAsString())
                .contains(
                        "Ana Ruelas",
                        "line 2 (mail)",
                        "Nothing has shown yet that it works",
                        "Not proven for 30 days",
                        "action=\"/people/ana/lines/2/test\"");
        assertThat(doors.as("reader", HttpMethod.GET, "/people/ana")
                        .exchange()
                        .getResponse()
                        .getContentAsString())
                .contains("line 2 (mail)")
                .doesNotContain("/lines/2/test", "5755550101");
        assertThat(doors.as("hand", HttpMethod.GET, "/people/cleo").exchange()).hasStatus(404);
    }

    @Test
    void the_button_of_the_page_leads_back_to_it() {
        assertThat(doors.as("hand", HttpMethod.POST, "/people/ana/lines/1/test").exchange())
                .hasStatus(303)
                .hasHeader("Location", "/people/ana");
        assertThat(lane.decided).containsExactly(new Stimulus.TestLine("ana", 0, "hand"));
    }

    @Test
    void what_the_rules_refuse_is_said_beside_the_line() throws Exception {
        lane.answer = new Answer.Refusal(
                Sentence.of("test.again", "this line was tested a moment ago", Instant.parse("2026-11-25T08:20:00Z")));

        MvcTestResult page =
                doors.as("hand", HttpMethod.POST, "/people/ana/lines/2/test").exchange();

        assertThat(page).hasStatus(409);
        assertThat(page.getResponse().getContentAsString()).contains("this line was tested a moment ago");
    }

    @Test
    void the_old_address_of_the_page_leads_to_it() {
        assertThat(doors.as("reader", HttpMethod.GET, "/contacts/ana").exchange())
                .hasStatus(303)
                .hasHeader("Location", "/people/ana");
    }

    @Test
    void the_page_of_all_says_whom_nothing_has_reached_and_who_has_quiet_hours() throws Exception {
        String page = doors.as("reader", HttpMethod.GET, "/people")
                .header("Accept-Language", "es")
                .exchange()
                .getResponse()
                .getContentAsString();

        assertThat(page)
                .contains("Ana Ruelas", "Todavía no se le ha alcanzado", "Descansa hasta las 6:00", "línea 2 (mail)")
                .doesNotContain("/new-person");
    }

    @Test
    void the_first_page_names_them() throws Exception {
        assertThat(doors.as("reader", HttpMethod.GET, "/")
                        .exchange()
                        .getResponse()
                        .getContentAsString())
                .contains(
                        "href=\"/people/ana\"",
                        "not reached yet",
                        "not proven for 30 days: line 1 (sms-mail), line 2 (mail)");
    }
}
