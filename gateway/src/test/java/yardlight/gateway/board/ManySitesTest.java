package yardlight.gateway.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.context.annotation.Import;
import org.springframework.http.HttpMethod;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.PreparedStatementSetter;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.db.columns.AlarmColumns;
import yardlight.db.columns.BoxColumns;
import yardlight.db.columns.CalloutColumns;
import yardlight.db.columns.NoticeColumns;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Place;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.CountedQueries;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;

/** The first page of an operator with five hundred sites. */
@GatewayTest
@Import(CountedQueries.class)
@TestPropertySource(properties = "spring.datasource.url=jdbc:h2:mem:many;DB_CLOSE_DELAY=-1")
class ManySitesTest {

    private static final int MANY = 500;

    /** Milliseconds on the server. */
    private static final long LIMIT = 300;

    /** How many times as long it may take while others build on the same machine; what it took is printed. */
    private static final int PATIENCE = 4;

    private static final int MOST_BYTES = 100_000;

    private final Doors doors;
    private final JdbcTemplate jdbc;
    private final TestGateway.InMemorySetup inForce;

    ManySitesTest(Doors doors, JdbcTemplate jdbc, TestGateway.InMemorySetup inForce) {
        this.doors = doors;
        this.jdbc = jdbc;
        this.inForce = inForce;
    }

    @AfterEach
    void forget() {
        inForce.set(Fixtures.theSetup());
        List.of("notice_callout", "notice", "callout", "alarm").forEach(table -> jdbc.update("delete from " + table));
        jdbc.update("delete from box_watch");
    }

    @Test
    void needs_as_many_queries_for_five_hundred_sites_as_for_five() {
        assertThat(queries(5, 0)).isEqualTo(queries(MANY, 0)).isPositive();
        assertThat(queries(5, 5)).isEqualTo(queries(MANY, MANY)).isLessThanOrEqualTo(12);
    }

    @Test
    void is_made_quickly_and_small_when_nothing_is_wrong() throws Exception {
        sites(MANY, 0);

        assertThat(millis("quiet")).isLessThan(PATIENCE * LIMIT);
        String page = page();
        assertThat(page).contains("500 sites are quiet").contains("All is well. Nobody is being called.");
        assertThat(page.length()).as("bytes").isLessThan(MOST_BYTES);
    }

    @Test
    void is_made_quickly_in_a_flood_as_well() throws Exception {
        sites(MANY, MANY);

        assertThat(millis("in alarm")).isLessThan(PATIENCE * LIMIT);
        String page = page();
        assertThat(page.split("class=\"sheet card open\"")).hasSize(Places.CARDS + 1);
        assertThat(page).contains("Site 499 TANK high");
    }

    private long queries(int sites, int alarms) {
        sites(sites, alarms);
        page();
        return CountedQueries.during(this::page);
    }

    /** The median of what nine calls took, after as many that nobody looks at. */
    private long millis(String what) throws Exception {
        var took = new long[9];
        int bytes = 0;
        for (int i = -took.length; i < took.length; i++) {
            long began = System.nanoTime();
            bytes = page().length();
            if (i >= 0) {
                took[i] = (System.nanoTime() - began) / 1_000_000;
            }
        }
        Arrays.sort(took);
        System.out.printf(
                "Now with %d sites %s: %d ms on the server (limit %d), %d bytes%n",
                MANY, what, took[took.length / 2], LIMIT, bytes);
        return took[took.length / 2];
    }

    private String page() {
        try {
            MvcTestResult answer =
                    doors.as("owner", HttpMethod.GET, "/").accept("text/html").exchange();
            assertThat(answer).hasStatusOk();
            return answer.getResponse().getContentAsString();
        } catch (java.io.UnsupportedEncodingException e) {
            throw new IllegalStateException(e);
        }
    }

    private void sites(int count, int alarms) {
        forget();
        List<Site> sites = IntStream.range(0, count)
                .mapToObj(i -> new Site("site-" + i, "Site " + i, Fixtures.CHICAGO, "night"))
                .toList();
        List<Box> boxes = sites.stream()
                .map(site -> new Box(
                        site.id() + "-box",
                        site.id(),
                        Optional.empty(),
                        Optional.empty(),
                        true,
                        Optional.of(Duration.ofMinutes(1)),
                        Duration.ofMinutes(2)))
                .toList();
        inForce.set(new Setup(
                sites,
                boxes,
                List.of(),
                List.of(Fixtures.ana(), Fixtures.ben()),
                List.of(Fixtures.crew()),
                List.of(Fixtures.night())));
        boxes.forEach(box -> keep(
                BoxColumns.TABLE.insert(),
                statement -> BoxColumns.TABLE.bindInsert(
                        statement,
                        new BoxWatch(
                                box.id(), TestGateway.NOW.minusSeconds(12), Optional.empty(), false, Heartbeat.BARE))));
        IntStream.range(0, alarms).mapToObj(i -> "site-" + i).forEach(this::inAlarm);
    }

    /** An alarm for which one person was called. */
    private void inAlarm(String site) {
        Alarm alarm = alarm(site);
        var facts = new Callout.Facts(
                "c-" + site,
                47,
                site,
                "night",
                Priority.HIGH,
                List.of(alarm.key()),
                TestGateway.NOW,
                1,
                1,
                Set.of("ana"),
                Map.of());
        Callout callout = new Callout.Calling(facts, Place.FOOT, TestGateway.NOW.plusSeconds(300));
        var notice = new Notice(
                "n-" + site,
                "ana",
                List.of(callout.id()),
                Priority.HIGH,
                "SITE TANK HIGH 2:13 AM. Reply OK 47",
                NoticeState.QUEUED,
                TestGateway.NOW,
                Optional.empty(),
                Optional.empty(),
                0);
        keep(
                AlarmColumns.TABLE.insert(),
                row -> AlarmColumns.TABLE.bindInsert(row, new AlarmColumns.Occurrence(alarm, true)));
        keep(CalloutColumns.TABLE.insert(), row -> CalloutColumns.TABLE.bindInsert(row, callout));
        keep(
                NoticeColumns.TABLE.insert(),
                row -> NoticeColumns.TABLE.bindInsert(
                        row,
                        new NoticeColumns.KeptNotice(
                                notice, Optional.of("sms-mail"), Optional.empty(), Optional.empty())));
        jdbc.update("insert into notice_callout (notice, callout) values (?, ?)", notice.id(), callout.id());
    }

    private void keep(String insert, PreparedStatementSetter row) {
        jdbc.update(insert, row);
    }

    private static Alarm alarm(String site) {
        return Alarm.normal(new AlarmKey(site, "tank", "high"))
                .draft()
                .occurrence(1)
                .active(true)
                .state(AlarmState.UNACKNOWLEDGED)
                .occurredAt(Optional.of(TestGateway.NOW))
                .callout(Optional.of("c-" + site))
                .done();
    }
}
