package yardlight.gateway.coversheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.http.HttpMethod;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.PreparedStatementSetter;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.db.columns.LineColumns;
import yardlight.escalation.Fixtures;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;

/** What people and programs are shown of one site's coverage. It is 2:13 AM at Mesa 9. */
@GatewayTest
class CoverageSheetTest {

    private static final String DAY = "&from=2026-11-25T12:00:00Z&to=2026-11-26T12:00:00Z";

    private final Doors doors;
    private final TestGateway.InMemorySetup inForce;
    private final JdbcTemplate jdbc;

    CoverageSheetTest(Doors doors, TestGateway.InMemorySetup inForce, JdbcTemplate jdbc) {
        this.doors = doors;
        this.inForce = inForce;
        this.jdbc = jdbc;
    }

    @AfterEach
    void back() {
        inForce.set(Fixtures.theSetup());
        jdbc.update("delete from line_health where contact = 'ana'");
    }

    private static Setup calling(String... people) {
        return Fixtures.calling(new Ladder(
                "night",
                Ladder.EndsWhen.ACKNOWLEDGED,
                List.of(people).stream()
                        .map(one -> new Rung(List.of(one), Duration.ofMinutes(5), 2))
                        .toList(),
                0));
    }

    private void prove() {
        var key = new LineHealth.Key("ana", "mail", "ana@mesa.example");
        LineHealth proven = LineHealth.unknown(key).delivered(TestGateway.NOW.minusSeconds(60));
        PreparedStatementSetter row = statement -> LineColumns.TABLE.bindInsert(statement, proven);
        jdbc.update(LineColumns.TABLE.insert(), row);
    }

    private MvcTestResult api(String query) {
        return doors.as("reader", HttpMethod.GET, "/api/v1/coverage?" + query).exchange();
    }

    @Test
    void a_program_is_told_who_hears_by_which_proven_lines_and_who_next() {
        inForce.set(calling("ana", "ben"));
        prove();

        MvcTestResult told = api("site=mesa-9&priority=high" + DAY);

        assertThat(told).hasStatusOk().bodyJson().isStrictlyEqualTo("""
                {"site": "mesa-9", "from": "2026-11-25T12:00:00Z", "to": "2026-11-26T12:00:00Z", "inService": true,
                 "coverage": [{"priorities": ["high"], "stretches": [
                   {"from": "2026-11-25T12:00:00Z", "to": "2026-11-26T12:00:00Z", "gap": false, "reasons": [],
                    "first": {"contact": "ana", "after": "PT0S", "lines": [
                      {"channel": "sms-mail", "proven": false}, {"channel": "mail", "proven": true}]},
                    "second": {"contact": "ben", "after": "PT10M", "lines": [
                      {"channel": "sms-mail", "proven": false}]}}]}]}
                """);
    }

    @Test
    void a_program_is_told_of_gaps_and_why_and_of_priorities_that_are_alike_once() {
        inForce.set(calling("ana"));

        MvcTestResult told = api("site=mesa-9" + DAY);

        assertThat(told)
                .hasStatusOk()
                .bodyJson()
                .extractingPath("$.coverage[*].priorities")
                .asArray()
                .containsExactly(List.of("low", "medium"), List.of("high", "critical"));
        assertThat(told)
                .bodyJson()
                .extractingPath("$.coverage[0].stretches")
                .asArray()
                .extracting(stretch -> ((Map<?, ?>) stretch).get("from") + " " + ((Map<?, ?>) stretch).get("gap") + " "
                        + ((Map<?, ?>) stretch).get("reasons"))
                .containsExactly(
                        "2026-11-25T12:00:00Z false [\"unproven-line\"]",
                        "2026-11-26T03:00:00Z true [\"quiet-hours\"]");
        assertThat(told)
                .bodyJson()
                .extractingPath("$.coverage[0].stretches[1].first.at")
                .isEqualTo("2026-11-26T12:00:00Z");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "site=nowhere",
                "site=mesa-9&priority=urgent",
                "site=mesa-9&from=yesterday",
                "site=mesa-9&from=2026-11-25T12:00:00Z&to=2026-11-25T12:00:00Z",
                "site=mesa-9&from=2026-11-25T12:00:00Z&to=2027-12-31T12:00:00Z"
            })
    void a_question_that_makes_no_sense_is_refused(String query) {
        assertThat(api(query)).hasStatus(422);
    }

    @Test
    void the_page_names_every_gap_with_its_reason_and_who_hears() {
        inForce.set(calling("ana"));
        prove();

        assertThat(doors.as("reader", HttpMethod.GET, "/sites/mesa-9/coverage").exchange())
                .hasStatusOk()
                .bodyText()
                .contains("Mesa 9: who would hear")
                .containsSubsequence(
                        "Alarms: high and critical",
                        "At every hour somebody is called at once.",
                        "Alarms: low and medium",
                        "401 gaps. The first: nobody would hear it at once from now to Wed 6:00 AM.",
                        "quiet hours let nothing of this priority through",
                        "from now to Wed 6:00 AM",
                        "Wed 9:00 PM to Thu 6:00 AM",
                        "After that",
                        "Wed, Dec 29, 2027, 9:00 PM to Thu, Dec 30, 2027, 2:13 AM",
                        "from now to Wed 6:00 AM: Ana Ruelas when quiet hours end, Wed 6:00 AM (sms-mail not proven, mail proven)",
                        "Wed 6:00 AM to Wed 9:00 PM: Ana Ruelas at once (sms-mail not proven, mail proven)")
                .doesNotContain("Called, but by no line", "@mesa.example", "and 1 more");
    }

    @Test
    void the_page_says_that_those_who_are_called_are_not_proven_and_that_a_site_is_out_of_service() {
        assertThat(doors.as("reader", HttpMethod.GET, "/sites/mesa-9/coverage").exchange())
                .bodyText()
                .contains("Called, but by no line that has proved to work: from now to Thu, Dec 30, 2027, 2:13 AM")
                .doesNotContain("Gaps and why");

        Setup setup = Fixtures.theSetup();
        var closed = new Site("mesa-9", "Mesa 9", Fixtures.CHICAGO, "night", Site.FILLS, Site.EMPTIES, false);
        inForce.set(new Setup(
                List.of(closed),
                List.of(),
                List.of(),
                List.copyOf(setup.contacts().values()),
                List.copyOf(setup.rosters().values()),
                List.copyOf(setup.ladders().values())));

        assertThat(doors.as("reader", HttpMethod.GET, "/sites/mesa-9/coverage").exchange())
                .bodyText()
                .contains("The site is out of service: nobody is called for it.")
                .doesNotContain("Alarms: ");
        assertThat(api("site=mesa-9")).bodyJson().extractingPath("$.inService").isEqualTo(false);
        assertThat(doors.as("reader", HttpMethod.GET, "/sites/nowhere/coverage").exchange())
                .hasStatus(404);
    }
}
