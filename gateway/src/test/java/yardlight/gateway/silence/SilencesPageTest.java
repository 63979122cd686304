package yardlight.gateway.silence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpMethod;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.PreparedStatementSetter;
import yardlight.db.columns.AbsenceColumns;
import yardlight.db.columns.AbsenceColumns.Placed;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.Clue;
import yardlight.escalation.heartbeat.Evidence;
import yardlight.escalation.heartbeat.Judgement;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.heartbeat.Verdict;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;

@GatewayTest
class SilencesPageTest {

    private static final Instant LAST_WORD = TestGateway.NOW.minusSeconds(600);
    private static final Instant FOUND = LAST_WORD.plusSeconds(130);

    private final Doors doors;
    private final JdbcTemplate jdbc;

    SilencesPageTest(Doors doors, JdbcTemplate jdbc) {
        this.doors = doors;
        this.jdbc = jdbc;
    }

    @BeforeEach
    void aBoxThatWasBackTenSecondsAfterItsAlarm() {
        var member = new Absence.Member(LAST_WORD, Optional.of(FOUND.plusSeconds(10)));
        var absence = new Absence(
                "mesa-9.box.silent.1",
                new AlarmKey("mesa-9", "box", "silent"),
                Path.site("mesa-9"),
                Path.site("mesa-9"),
                LAST_WORD,
                FOUND,
                new TreeMap<>(Map.of("mesa-9-box", member)),
                Verdict.SILENT,
                Judgement.by(List.of(new Evidence(Clue.LINK_LIVES, FOUND, "pico-2-box"))),
                member.back());
        PreparedStatementSetter row =
                statement -> AbsenceColumns.TABLE.bindInsert(statement, new Placed(absence, false));
        jdbc.update(AbsenceColumns.TABLE.insert(), row);
    }

    @AfterEach
    void forget() {
        jdbc.update("delete from silence where alarm = 'mesa-9.box.silent.1'");
    }

    @Test
    void shows_how_the_deadlines_did_by_box_and_month() {
        assertThat(doors.as("reader", HttpMethod.GET, "/silences").exchange())
                .hasStatus(200)
                .bodyText()
                .contains("How the deadlines did")
                .contains("mesa-9-box, November 2026: alarms 1, of them wrong 1, found after 130 s");
    }

    @Test
    void says_why_in_the_language_of_the_reader() {
        assertThat(doors.as("reader", HttpMethod.GET, "/silences").exchange())
                .bodyText()
                .contains("box pico-2-box speaks over the same link");
        assertThat(doors.as("reader", HttpMethod.GET, "/silences")
                        .header("Accept-Language", "es-MX")
                        .exchange())
                .bodyText()
                .contains("la caja pico-2-box habla por el mismo enlace")
                .doesNotContain("same link");
    }
}
