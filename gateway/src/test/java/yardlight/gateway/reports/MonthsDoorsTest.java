package yardlight.gateway.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpMethod;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.PreparedStatementSetter;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.db.columns.AlarmColumns;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Priority;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;

/** A month in which one alarm came and went, through the doors. */
@GatewayTest
class MonthsDoorsTest {

    private static final Instant FIRST = Fixtures.at("2026-10-02T00:00");
    private static final String OCTOBER = "?site=mesa-9&from=2026-10&to=2026-10";

    private final Doors doors;
    private final JdbcTemplate jdbc;

    MonthsDoorsTest(Doors doors, JdbcTemplate jdbc) {
        this.doors = doors;
        this.jdbc = jdbc;
    }

    @BeforeEach
    void forty_alarms_of_which_thirty_are_over_in_fifteen_seconds_and_three_texts_at_night() {
        for (int i = 1; i <= 40; i++) {
            Instant at = FIRST.plus(Duration.ofHours(i));
            alarm(i, at, at.plusSeconds(i <= 30 ? 15 : 900));
        }
        text(1, "2026-10-05T02:13", "sms-mail");
        text(2, "2026-10-05T02:30", "sms-mail");
        text(3, "2026-10-05T03:30", "sms-mail");
        text(4, "2026-10-05T04:30", "mail");
        text(5, "2026-10-05T12:00", "sms-mail");
    }

    @AfterEach
    void forget() {
        jdbc.update("delete from alarm where point = 'sump'");
        jdbc.update("delete from notice where id like 'month-%'");
    }

    private void alarm(int occurrence, Instant at, Instant over) {
        Alarm alarm = Alarm.normal(new AlarmKey("mesa-9", "sump", "high"))
                .draft()
                .occurrence(occurrence)
                .state(AlarmState.NORMAL)
                .priority(Priority.LOW)
                .occurredAt(Optional.of(at))
                .receivedAt(Optional.of(at))
                .returnedAt(Optional.of(over))
                .acknowledgedAt(Optional.of(at.plusSeconds(120)))
                .acknowledgedBy(Optional.of("ana"))
                .callout(Optional.of("c-" + occurrence))
                .done();
        PreparedStatementSetter row =
                statement -> AlarmColumns.TABLE.bindInsert(statement, new AlarmColumns.Occurrence(alarm, false));
        jdbc.update(AlarmColumns.TABLE.insert(), row);
    }

    private void text(int number, String local, String channel) {
        OffsetDateTime at = Fixtures.at(local).atOffset(ZoneOffset.UTC);
        jdbc.update(
                "insert into notice (id, contact, callouts, priority, words, state, queued_at, line, channel,"
                        + " handed_over_at, purpose) values (?, 'ana', 'c', 'low', '', 'handed-over', ?, 0, ?, ?, 'call')",
                "month-" + number,
                at,
                channel,
                at);
    }

    private MvcTestResult get(String login, String address, String accept) {
        return doors.as(login, HttpMethod.GET, address).accept(accept).exchange();
    }

    @Test
    void a_month_is_rated_and_the_advice_is_computed() {
        MvcTestResult json = get("reader", "/api/v1/reports/performance" + OCTOBER, "*/*");

        assertThat(json).hasStatusOk().bodyJson().extractingPath("$[0].month").isEqualTo("2026-10");
        assertThat(json).bodyJson().extractingPath("$[0].announced").isEqualTo(40);
        assertThat(json)
                .bodyText()
                .contains(
                        "\"whole\":true",
                        "{\"figure\":\"peak\",\"value\":1,\"target\":10,\"met\":true}",
                        "{\"onDelay\":\"PT20S\",\"before\":40,\"removed\":30}",
                        "\"median\":\"PT2M\"",
                        "\"priorities\":{\"low\":1}");
    }

    @Test
    void the_same_is_a_table_and_a_page() {
        assertThat(get("reader", "/api/v1/reports/performance" + OCTOBER, "text/csv"))
                .hasStatusOk()
                .bodyText()
                .contains(
                        "2026-10,peak,,1,10,true",
                        "2026-10,frequent,mesa-9/sump/high,40,,",
                        "2026-10,removed-by-on-delay-20-s,mesa-9/sump/high,30,,");
        assertThat(get("reader", "/reports/performance" + OCTOBER, "text/html"))
                .hasStatusOk()
                .bodyText()
                .contains(
                        "October 2026",
                        "Announced: 40 alarms of 40 that occurred.",
                        "Mesa 9 SUMP high: 100\u00A0% of the load. An on-delay of 20 s removes 30 of 40.",
                        "/reports/performance.csv?site=mesa-9&amp;from=2026-10&amp;to=2026-10");
        assertThat(doors.as("reader", HttpMethod.GET, "/reports/performance" + OCTOBER)
                        .header("Accept-Language", "es")
                        .accept("text/html")
                        .exchange())
                .bodyText()
                .contains("octubre 2026", "Una demora de 20 s quita 30 de 40.");
    }

    @Test
    void texts_and_wakings_are_told_to_hands_and_to_no_reader() {
        String october = "?from=2026-10&to=2026-10";

        assertThat(get("hand", "/api/v1/reports/burden" + october, "*/*"))
                .hasStatusOk()
                .bodyText()
                .contains(
                        "{\"contact\":\"ana\",\"name\":\"Ana Ruelas\",\"zone\":\"America/Chicago\",\"month\":\"2026-10\","
                                + "\"texts\":4,\"mails\":1,\"calls\":5,\"atNight\":3,\"wakings\":2}");
        assertThat(get("hand", "/reports/burden" + october, "text/html"))
                .bodyText()
                .contains("woken: 2; texts: 4, at night: 3; mails: 1; calls among them: 5");
        assertThat(get("hand", "/reports/burden.csv" + october, "text/csv"))
                .bodyText()
                .contains("2026-10,ana,Ana Ruelas,America/Chicago,4,1,5,3,2");
        for (String door : List.of("/api/v1/reports/burden", "/reports/burden", "/reports/burden.csv")) {
            assertThat(get("reader", door + october, "*/*")).hasStatus(403);
        }
        assertThat(get("reader", "/reports", "text/html")).bodyText().doesNotContain("/reports/burden");
    }

    @Test
    void more_than_thirteen_months_are_refused_and_the_page_says_so_beside_them() {
        assertThat(get("hand", "/api/v1/reports/performance?from=2025-10&to=2026-11", "*/*"))
                .hasStatus(422)
                .bodyText()
                .contains("must be at most 12 months before to");
        assertThat(get("hand", "/api/v1/reports/burden?from=2026-12&to=2026-11", "*/*"))
                .hasStatus(422)
                .bodyText()
                .contains("must not be after to");
        assertThat(get("hand", "/api/v1/reports/burden?from=november", "*/*")).hasStatus(422);
        assertThat(get("hand", "/reports/burden?from=2026-12&to=2026-11", "text/html"))
                .hasStatusOk()
                .bodyText()
                .contains("Not before the first month.");
    }
}
