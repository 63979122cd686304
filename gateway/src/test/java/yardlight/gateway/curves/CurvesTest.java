package yardlight.gateway.curves;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.PreparedStatementSetter;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import yardlight.db.columns.AlarmColumns;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.limit.Limits;
import yardlight.escalation.limit.Rules;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;
import yardlight.gateway.strip.Stored;

/** What the page of curves says without a script, and what its script is given. */
@GatewayTest
class CurvesTest {

    private static final Instant NOW = TestGateway.NOW;
    private static final Stored.Series TANK = new Stored.Series(901, "mesa-9", "water-tank", "ft");

    private final Doors doors;
    private final JdbcTemplate jdbc;
    private final TestGateway.InMemorySetup setup;

    CurvesTest(Doors doors, JdbcTemplate jdbc, TestGateway.InMemorySetup setup) {
        this.doors = doors;
        this.setup = setup;
        this.jdbc = jdbc;
    }

    @AfterEach
    void forget() {
        setup.set(Fixtures.theSetup());
        Stored.forget(jdbc);
        jdbc.update("delete from alarm where id = 'mesa-9.water-tank.high-high.77'");
    }

    private void read(Duration step, Duration before) {
        Stored.every(jdbc, TANK, step, NOW.minus(before), NOW, at -> 10 + at.getEpochSecond() / 60 % 50 / 10.0);
    }

    private JsonNode figures(Instant from, Instant to, String more) {
        String path = "/sites/mesa-9/curves/figures?points=water-tank&from=" + from.getEpochSecond() + "&to="
                + to.getEpochSecond() + more;
        MvcTestResult result = doors.as("reader", HttpMethod.GET, path).exchange();
        assertThat(result).hasStatusOk();
        return JsonMapper.shared().readTree(body(result));
    }

    private String page(String query, String language) {
        MvcTestResult result = doors.as("reader", HttpMethod.GET, "/sites/mesa-9/curves" + query)
                .accept("text/html")
                .header(HttpHeaders.ACCEPT_LANGUAGE, language)
                .exchange();
        assertThat(result).hasStatusOk();
        return body(result);
    }

    private static String body(MvcTestResult result) {
        try {
            return result.getResponse().getContentAsString();
        } catch (java.io.UnsupportedEncodingException e) {
            throw new AssertionError(e);
        }
    }

    private static List<Long> at(JsonNode curve) {
        var at = new ArrayList<Long>();
        curve.get("at").forEach(one -> at.add(one.asLong()));
        return at;
    }

    @Test
    void are_no_more_figures_for_400_days_than_for_an_hour() {
        read(Duration.ofHours(1), Duration.ofDays(400));

        JsonNode curve =
                figures(NOW.minus(Duration.ofDays(400)), NOW, "").get("curves").get(0);

        assertThat(at(curve)).hasSizeBetween(400, 800).isSorted();
        assertThat(curve.get("low")).hasSameSizeAs(curve.get("mean")).hasSameSizeAs(curve.get("high"));
        assertThat(curve.get("unit").asString()).isEqualTo("ft");
        assertThat(curve.get("name").asString()).isEqualTo("WATER TANK");
    }

    @Test
    void single_readings_come_as_they_were_without_a_band() {
        read(Duration.ofMinutes(1), Duration.ofHours(1));

        JsonNode curve =
                figures(NOW.minus(Duration.ofHours(1)), NOW, "").get("curves").get(0);

        assertThat(at(curve)).hasSize(60);
        assertThat(curve.get("low")).isEmpty();
        assertThat(at(curve).get(59)).isEqualTo(NOW.minusSeconds(60).getEpochSecond());
    }

    @Test
    void a_line_is_cut_where_nothing_was_read() {
        read(Duration.ofMinutes(1), Duration.ofHours(2));
        long from = yardlight.db.reading.Slot.of(TANK.number(), NOW.minusSeconds(3600));
        long to = yardlight.db.reading.Slot.of(TANK.number(), NOW.minusSeconds(1800));
        jdbc.update("delete from reading where slot >= ? and slot < ?", from, to);

        JsonNode curve =
                figures(NOW.minus(Duration.ofHours(2)), NOW, "").get("curves").get(0);

        var cuts = new ArrayList<Integer>();
        for (int i = 0; i < curve.get("mean").size(); i++) {
            if (curve.get("mean").get(i).isNull()) {
                cuts.add(i);
            }
        }
        assertThat(cuts).containsExactly(60);
    }

    /** America/Chicago put its clock back on 2026-11-01: a week before lies 169 hours back on that day. */
    @Test
    void the_day_before_and_the_week_before_lie_under_it_by_the_clock_of_the_site() {
        Instant noon = Instant.parse("2026-11-01T18:00:00Z");
        Stored.every(
                jdbc,
                TANK,
                Duration.ofHours(1),
                noon.minus(Duration.ofDays(9)),
                noon,
                at -> at.getEpochSecond() / 3600.0);

        JsonNode curves = figures(noon.minusSeconds(7200), noon, "&beside=true").get("curves");

        assertThat(curves).hasSize(3);
        assertThat(curves.get(1).get("name").asString()).isEqualTo("WATER TANK, a day before");
        assertThat(curves.get(2).get("name").asString()).isEqualTo("WATER TANK, a week before");
        assertThat(at(curves.get(1))).isEqualTo(at(curves.get(0)));
        assertThat(at(curves.get(2))).isEqualTo(at(curves.get(0)));
        double today = curves.get(0).get("mean").get(0).asDouble();
        assertThat(curves.get(1).get("mean").get(0).asDouble()).isEqualTo(today - 25);
        assertThat(curves.get(2).get("mean").get(0).asDouble()).isEqualTo(today - 7 * 24 - 1);
    }

    @Test
    void alarms_of_the_time_are_drawn_in_with_their_page() {
        read(Duration.ofMinutes(1), Duration.ofHours(3));
        alarm(NOW.minus(Duration.ofHours(2)), NOW.minus(Duration.ofHours(1)));

        JsonNode alarms = figures(NOW.minusSeconds(5400), NOW, "").get("alarms");
        JsonNode none = figures(NOW.minusSeconds(1800), NOW, "").get("alarms");

        assertThat(alarms).hasSize(1);
        assertThat(alarms.get(0).get("page").asString()).isEqualTo("/alarms/mesa-9.water-tank.high-high.77");
        assertThat(alarms.get(0).get("words").asString()).isEqualTo("WATER TANK high-high, since 12:13 AM");
        assertThat(none).isEmpty();
        assertThat(page("?span=PT3H", "en")).contains("WATER TANK high-high, since 12:13 AM");
    }

    private void alarm(Instant from, Instant to) {
        Alarm alarm = Alarm.normal(new AlarmKey("mesa-9", "water-tank", "high-high"))
                .draft()
                .occurrence(77)
                .state(AlarmState.NORMAL)
                .occurredAt(Optional.of(from))
                .returnedAt(Optional.of(to))
                .done();
        PreparedStatementSetter row =
                statement -> AlarmColumns.TABLE.bindInsert(statement, new AlarmColumns.Occurrence(alarm, false));
        jdbc.update(AlarmColumns.TABLE.insert(), row);
    }

    @Test
    void limits_are_drawn_in_with_the_side_on_which_the_trouble_lies() {
        read(Duration.ofMinutes(1), Duration.ofHours(3));
        setup.set(withLimits(Fixtures.theSetup()));

        JsonNode limits = figures(NOW.minusSeconds(5400), NOW, "").get("limits");

        assertThat(limits).hasSize(2);
        assertThat(limits.get(0).get("words").asString()).isEqualTo("low");
        assertThat(limits.get(0).get("above").asBoolean()).isFalse();
        assertThat(limits.get(1).get("words").asString()).isEqualTo("high-high");
        assertThat(limits.get(1).get("value").asDouble()).isEqualTo(15.5);
        assertThat(page("", "en")).contains(">high-high 15.5</text>");
        assertThat(page("", "es")).contains(">alto-alto 15.5</text>");
    }

    private static Setup withLimits(Setup setup) {
        var limits = new Limits(
                Optional.of(new BigDecimal("15.5")),
                Optional.empty(),
                Optional.of(new BigDecimal("9.5")),
                Optional.empty(),
                BigDecimal.ZERO);
        return new Setup(
                List.copyOf(setup.sites().values()),
                List.copyOf(setup.boxes().values()),
                setup.points().stream()
                        .map(point -> point.with(Rules.of(limits)))
                        .toList(),
                List.copyOf(setup.contacts().values()),
                List.copyOf(setup.rosters().values()),
                List.copyOf(setup.ladders().values()));
    }

    @Test
    void the_page_says_it_in_words_and_figures_and_draws_without_a_script() {
        read(Duration.ofMinutes(1), Duration.ofDays(1));

        String english = page("", "en");

        assertThat(english)
                .contains("WATER TANK: last 12.2 ft, 2:12 AM; lowest 10 ft,")
                .contains("<path class=\"curve\" d=\"M")
                .contains("<td>1:00 AM</td>")
                .contains("data-points=\"water-tank\"")
                .doesNotContain("style=");
        assertThat(page("", "es-MX")).contains("WATER TANK: última 12.2 ft, 2:12; mínima 10 ft,");
    }

    @Test
    void an_address_that_was_cut_off_or_made_up_still_shows_something() {
        read(Duration.ofMinutes(1), Duration.ofDays(1));

        assertThat(page("?span=P9000D&until=tomorrow&points=", "en")).contains("WATER TANK: last 12.2 ft");
        assertThat(page("?points=no-such-point", "en")).contains("NO SUCH POINT: nothing was read in this time.");
        assertThat(doors.as("reader", HttpMethod.GET, "/sites/nowhere/curves").accept("text/html"))
                .hasStatus(404);
        assertThat(doors.as("reader", HttpMethod.GET, "/sites/nowhere/curves/figures?points=a&from=1&to=2"))
                .hasStatus(404);
        assertThat(doors.as("reader", HttpMethod.GET, "/sites/mesa-9/curves/figures?points=a&from=5&to=2"))
                .hasStatus(404);
    }

    @Test
    void a_site_without_readings_says_so() {
        assertThat(page("", "en")).contains("Nothing was read here yet.").doesNotContain("id=\"curves\"");
    }

    @Test
    void the_page_of_the_site_and_of_the_alarm_have_their_curves() {
        read(Duration.ofMinutes(1), Duration.ofHours(3));
        alarm(NOW.minus(Duration.ofHours(1)), NOW.minus(Duration.ofMinutes(30)));

        String site = body(doors.as("reader", HttpMethod.GET, "/sites/mesa-9")
                .accept("text/html")
                .exchange());
        String alarm = body(doors.as("reader", HttpMethod.GET, "/alarms/mesa-9.water-tank.high-high.77")
                .accept("text/html")
                .exchange());

        assertThat(site).contains("id=\"last-day\"").contains("aria-label=\"WATER TANK: last 12.2 ft");
        assertThat(alarm)
                .contains("class=\"trouble\"")
                .contains("/sites/mesa-9/curves?points=water-tank&amp;span=PT1H45M&amp;until=2026-11-25T07:58:00Z");
    }
}
