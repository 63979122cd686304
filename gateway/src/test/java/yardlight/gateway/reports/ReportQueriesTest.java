package yardlight.gateway.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.PreparedStatementSetter;
import org.springframework.test.context.TestPropertySource;
import yardlight.db.columns.AlarmColumns;
import yardlight.db.columns.CalloutColumns;
import yardlight.db.columns.Column;
import yardlight.db.columns.NoticeColumns;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Place;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.gateway.CountedQueries;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;
import yardlight.gateway.page.Tongues;

/** How many queries a whole report makes, as docs/reports.md says it. Each alarm has two callouts here, a text and a try in each. */
@GatewayTest
@Import(CountedQueries.class)
@TestPropertySource(properties = "spring.datasource.url=jdbc:h2:mem:reported;DB_CLOSE_DELAY=-1")
class ReportQueriesTest {

    private static final Instant FIRST = Fixtures.at("2026-11-01T00:00");

    private final NotificationReports notification;
    private final PerformanceReports performance;
    private final BurdenReports burden;
    private final JdbcTemplate jdbc;
    private int made;

    ReportQueriesTest(
            NotificationReports notification, PerformanceReports performance, BurdenReports burden, JdbcTemplate jdbc) {
        this.notification = notification;
        this.performance = performance;
        this.burden = burden;
        this.jdbc = jdbc;
    }

    @Test
    void are_as_many_for_forty_alarms_as_for_two() {
        for (int alarms : List.of(2, 40)) {
            alarmsUpTo(alarms);

            assertThat(CountedQueries.during(this::notification))
                    .as("of a period")
                    .isEqualTo(10);
            assertThat(CountedQueries.during(() -> performance.of(months(1))))
                    .as("of a month")
                    .isEqualTo(3);
            assertThat(CountedQueries.during(() -> performance.of(months(13))))
                    .as("of 13 months")
                    .isEqualTo(15);
            assertThat(CountedQueries.during(() -> burden.of(months(13))))
                    .as("of people")
                    .isEqualTo(1);
        }
    }

    private void notification() {
        var period = new Asked(Optional.empty(), Optional.of("mesa-9"), FIRST, TestGateway.NOW);

        NotificationReport report = notification.of(period, Tongues.ENGLISH, "rita");

        assertThat(report.alarms())
                .hasSize(made)
                .allSatisfy(one -> assertThat(one.told()).hasSize(2));
    }

    private static Months months(int count) {
        YearMonth last = YearMonth.of(2026, 11);
        return new Months(Optional.of("mesa-9"), last.minusMonths(count - 1L), last, Fixtures.CHICAGO);
    }

    private void alarmsUpTo(int count) {
        while (made < count) {
            made++;
            Instant at = FIRST.plus(Duration.ofHours(made));
            Alarm alarm = Alarm.normal(new AlarmKey("mesa-9", "sump", "high"))
                    .draft()
                    .occurrence(made)
                    .state(AlarmState.NORMAL)
                    .occurredAt(Optional.of(at))
                    .receivedAt(Optional.of(at))
                    .returnedAt(Optional.of(at.plusSeconds(600)))
                    .callout(Optional.of("later-" + made))
                    .done();
            keep(
                    AlarmColumns.TABLE.insert(),
                    row -> AlarmColumns.TABLE.bindInsert(row, new AlarmColumns.Occurrence(alarm, false)));
            callout("first-" + made, alarm, at.plusSeconds(1));
            callout("later-" + made, alarm, at.plusSeconds(300));
            jdbc.update(
                    "insert into log_line (line, logged_at, what, site, about, words)"
                            + " values (?, ?, 'callout', 'mesa-9', ?, 'callout 47 calls rung 1, round 1')",
                    made,
                    Column.stored(at.plusSeconds(1)),
                    "alarm " + alarm.id() + ";callout first-" + made + ";site mesa-9");
        }
    }

    private void callout(String id, Alarm alarm, Instant at) {
        var facts = new Callout.Facts(
                id, 47, "mesa-9", "night", Priority.HIGH, List.of(alarm.key()), at, 1, 1, Set.of("ana"), Map.of());
        var notice = new Notice(
                id + ".1",
                "ana",
                List.of(id),
                Priority.HIGH,
                "text",
                NoticeState.HANDED_OVER,
                at,
                Optional.empty(),
                Optional.empty(),
                0);
        keep(
                CalloutColumns.TABLE.insert(),
                row -> CalloutColumns.TABLE.bindInsert(row, new Callout.Exhausted(facts, Place.FOOT, at)));
        keep(
                NoticeColumns.TABLE.insert(),
                row -> NoticeColumns.TABLE.bindInsert(
                        row,
                        new NoticeColumns.KeptNotice(notice, Optional.of("mail"), Optional.of(at), Optional.empty())));
        jdbc.update("insert into notice_callout (notice, callout) values (?, ?)", notice.id(), id);
        jdbc.update(
                "insert into attempt (number, notice, attempted_at, channel, outcome, detail)"
                        + " values ((select count(*) from attempt) + 1, ?, ?, 'mail', 'accepted', '250 ok')",
                notice.id(),
                Column.stored(at));
    }

    private void keep(String insert, PreparedStatementSetter row) {
        jdbc.update(insert, row);
    }
}
