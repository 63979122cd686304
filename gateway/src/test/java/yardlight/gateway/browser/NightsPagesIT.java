package yardlight.gateway.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.escalation.alarm.Priority;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.PastRows;
import yardlight.gateway.Web;
import yardlight.gateway.setup.Documents;
import yardlight.gateway.setup.SetupInForce;

/** Past nights are played through a ladder as it stands in the form: first as it is, then with Ben before Ana. */
class NightsPagesIT extends SharedGateway {

    private static final String FORM = "application/x-www-form-urlencoded";

    /** A site and a ladder that no other test has alarms for. */
    private static final String RIDGE = Documents.CONTRACT.replace(
                    "ladder: night}]",
                    "ladder: night}, {id: ridge-3, name: Ridge 3, zone: America/Chicago, ladder: ridge}]")
            + "  - {id: ridge, rungs: [{call: [ana], wait: PT5M, rounds: 3}, {call: [everyone], wait: PT15M, rounds: 3}]}\n";

    private final JdbcTemplate jdbc;
    private final SetupInForce inForce;
    private final InstantSource clock;

    @Autowired
    NightsPagesIT(JdbcTemplate jdbc, SetupInForce inForce, InstantSource clock) {
        this.jdbc = jdbc;
        this.inForce = inForce;
        this.clock = clock;
    }

    @BeforeEach
    void the_nights() {
        setUp(RIDGE);
        Instant now = clock.instant();
        PastRows.forget(jdbc, "ridge-3");
        new PastRows(jdbc, inForce.setup(), "ridge-3")
                .night(now, 3, "03:13", "separator", Priority.HIGH, "ben", 2)
                .night(now, 9, "23:40", "heater", Priority.CRITICAL, "ana", 8)
                .night(now, 16, "04:05", "sump", Priority.HIGH, "ben", 3)
                .night(now, 17, "13:20", "heater", Priority.LOW, "ana", 1)
                .night(now, 30, "01:30", "separator", Priority.HIGH, "", 0)
                .night(now, 61, "03:50", "sump", Priority.HIGH, "ben", 11)
                .keep(now.minusSeconds(3600));
    }

    @AfterEach
    void forget() {
        PastRows.forget(jdbc, "ridge-3");
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void a_season_is_played_through_a_ladder_that_is_not_saved(Look look) {
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open("/ladders/ridge");
            page.click("#nights");
            same(page);
            choose(page, 3);
            assertThat(page.locator("#really")).containsText("longest wait 17 min");
            assertThat(page.locator("#would")).containsText("longest wait 17 min");
            visit.check("ladder-nights");

            page.click("#back");
            page.selectOption("#call-0-0", "ben");
            page.click("#nights");
            choose(page, 3);
            assertThat(page.locator("#really")).containsText("longest wait 17 min");
            assertThat(page.locator("#would")).containsText("1 text, longest wait 2 min");
            assertThat(page.locator("#would .hours")).containsText("3:15 AM Ben Tully has it: PAST SEPARATOR high");
            assertThat(page.locator("#season")).containsText("Nobody answered, of 6 alarms");
            visit.check("ladder-nights-other");

            page.click("#back");
            assertThat(page.locator("#call-0-0")).hasValue("ben");
        }
    }

    private static void same(Page page) {
        Locator rows = page.locator("#season tbody tr:has(td)");
        Assertions.assertThat(rows.count()).isGreaterThan(6);
        for (int i = 0; i < rows.count(); i++) {
            assertThat(rows.nth(i).locator("td").nth(1))
                    .hasText(rows.nth(i).locator("td").nth(0).innerText());
        }
    }

    /** The night that ended so many days ago. */
    private void choose(Page page, int daysAgo) {
        page.selectOption(
                "select[name=night]",
                LocalDate.ofInstant(clock.instant(), ZoneId.of("America/Chicago"))
                        .minusDays(daysAgo + 1L)
                        .toString());
        page.click("#play");
    }

    @Test
    void in_spanish_too() {
        try (var visit = Visit.inSpanish(port, Look.PHONE_BY_DAY).signIn("owner")) {
            Page page = visit.open("/ladders/ridge");
            page.click("#nights");
            assertThat(page.locator("#season")).containsText("Con esta escalera");
            visit.check("ladder-nights-spanish");
        }
    }

    @Test
    void it_works_without_a_script_and_a_ladder_that_is_wrong_goes_back_to_be_built() {
        String rung = "seen=0&edited=1&rung=0&call-0=ben&rounds-0=1&endsWhen=acknowledged&again=0&where=ridge-3/point";

        Assertions.assertThat(web.post("/ladders/ridge/nights", FORM, rung + "&wait-0=5", Web.owner())
                        .body())
                .contains("id=\"really\"", "id=\"would\"", "Ben Tully by text");
        Assertions.assertThat(web.post("/ladders/ridge/nights", FORM, rung + "&wait-0=soon", Web.owner())
                        .body())
                .contains("wrong-wait-0", "id=\"bench\"");
    }

    @Test
    void who_may_only_read_is_not_shown_what_people_were_called_at_night() {
        web.put(
                "/api/v1/logins/inspector",
                "application/json",
                "{\"role\": \"reader\", \"password\": \"" + GatewayTest.PASSWORD + "\"}",
                Web.owner());
        try (var visit = Visit.to(port, Look.PHONE_BY_DAY).signIn("inspector")) {
            assertThat(visit.open("/ladders/ridge").locator("#nights")).hasCount(0);
        }
    }
}
