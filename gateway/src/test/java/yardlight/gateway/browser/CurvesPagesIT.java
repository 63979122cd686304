package yardlight.gateway.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.DoubleStream;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;
import yardlight.gateway.strip.Stored;

/** The curves of a site with 400 days of readings, as somebody looks at them. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CurvesPagesIT {

    private static final String SETUP = Documents.CONTRACT.replace(
            "points:   [",
            "points:   [{id: separator, site: mesa-9, name: SEPARATOR, unit: psi},"
                    + " {id: oil-tank, site: mesa-9, name: OIL TANK, unit: ft, limits: {highHigh: 19, low: 8}}, ");
    private static final Duration YEAR = Duration.ofDays(400);
    private static final double MOST_MILLIS_A_FRAME = 100;

    private final int port;
    private final Web web;
    private final JdbcTemplate jdbc;

    @Autowired
    CurvesPagesIT(@LocalServerPort int port, JdbcTemplate jdbc) {
        this.port = port;
        this.web = new Web(port);
        this.jdbc = jdbc;
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
    }

    @BeforeAll
    void four_hundred_days() {
        web.put("/api/v1/setup", "application/yaml", SETUP, Web.owner());
        Instant now = Instant.now().truncatedTo(ChronoUnit.MINUTES);
        fill(1, "water-tank", "ft", now, 3);
        fill(2, "oil-tank", "ft", now, 11);
        fill(3, "separator", "psi", now, 40);
        String key = Web.json(web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner()))
                .get("key")
                .asString();
        web.post(
                "/api/v1/events",
                "application/json",
                "{\"point\": \"water-tank\", \"condition\": \"high-high\", \"state\": \"active\", \"priority\": \"high\","
                        + " \"value\": 18.4, \"limit\": 18.0, \"unit\": \"ft\"}",
                "Authorization",
                "Bearer " + key);
    }

    /** A tank that fills slowly and is pumped down, with a year's swing; each minute of the last month, then each ten. */
    private void fill(int number, String point, String unit, Instant now, double foot) {
        var series = new Stored.Series(number, "mesa-9", point, unit);
        Instant month = now.minus(Duration.ofDays(30));
        Stored.every(jdbc, series, Duration.ofMinutes(10), now.minus(YEAR), month, at -> level(at, number, foot));
        Stored.every(jdbc, series, Duration.ofMinutes(1), month, now, at -> level(at, number, foot));
    }

    private static double level(Instant at, int number, double foot) {
        double hours = at.getEpochSecond() / 3600.0 / (4 + number);
        double year = Math.sin(at.getEpochSecond() / 3.15e7 * 2 * Math.PI);
        double noise = Math.sin(at.getEpochSecond() * 12.9898 * number) * 0.08;
        return Math.round((foot + 9 * (hours - Math.floor(hours)) + year + noise) * 100) / 100.0;
    }

    private static Page drawn(Visit visit, String path) {
        Page page = visit.page();
        page.waitForResponse(answer -> answer.url().contains("/figures"), () -> visit.open(path));
        assertThat(page.locator("#panels canvas").first()).isVisible();
        return page;
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void any_points_of_a_site_are_seen_together(Look look) {
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = drawn(visit, "/sites/mesa-9/curves?points=water-tank&points=oil-tank&points=separator");
            assertThat(page.locator("#panels .panel")).hasCount(2);
            assertThat(page.locator(".keys").first()).containsText("OIL TANK");
            assertThat(page.locator(".keys").last()).containsText("psi");
            visit.check("curves");

            drawn(visit, "/sites/mesa-9/curves?points=water-tank&span=PT6H&beside=true");
            assertThat(page.locator(".keys")).containsText("WATER TANK, a week before");
            visit.check("curves-beside");
        }
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void the_site_and_the_alarm_show_theirs(Look look) {
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open("/sites/mesa-9");
            assertThat(page.locator("#last-day svg.strip")).hasCount(3);
            visit.check("site-curves");
            visit.open("/alarms/mesa-9.water-tank.high-high.1");
            assertThat(page.locator("#hour")).containsText("WATER TANK: last");
            page.locator("summary").getByText("The figures").click();
            visit.check("alarm-hour");
            page.locator("text=Look closer").click();
            assertThat(page.locator("#panels canvas")).isVisible();
        }
    }

    @Test
    void two_fingers_look_closer_and_one_pulls() {
        try (var visit = Visit.to(port, Look.PHONE_BY_DAY).signIn("owner")) {
            Page page = drawn(visit, "/sites/mesa-9/curves?points=water-tank&span=P7D");
            var fingers = new Fingers(page, "#panels .u-over");
            double before = span(page);

            page.waitForResponse(CurvesPagesIT::words, () -> fingers.pinch(30, 120));
            double closer = span(page);
            fingers.pull(150);
            page.waitForURL(url -> url.contains("until="));

            Assertions.assertThat(closer).isBetween(before / 5, before / 3);
            Assertions.assertThat(span(page)).isBetween(closer * 0.99, closer * 1.01);
            assertThat(page.locator("#accounts")).containsText("WATER TANK: last");
            visit.check("curves-closer");
        }
    }

    @Test
    void keys_and_buttons_do_the_same() {
        try (var visit = Visit.to(port, Look.DESK_BY_DAY).signIn("owner")) {
            Page page = drawn(visit, "/sites/mesa-9/curves?points=water-tank");
            double day = span(page);
            page.click("button[data-do=closer]");
            page.waitForURL(url -> url.contains("span=PT43"));
            Assertions.assertThat(span(page)).isBetween(day * 0.49, day * 0.51);
            page.focus("#panels");
            page.keyboard().press("Home");
            page.waitForURL(url -> url.contains("span=PT34560000S"));
            page.keyboard().press("End");
            page.keyboard().press("ArrowLeft");
            page.waitForURL(url -> url.contains("until="));
            page.click("button[data-do=now]");
            page.waitForURL(url -> !url.contains("until="));
        }
    }

    /** Frames while two fingers go from 400 days to a day, on two cores that others use too and without a graphics card. */
    @Test
    void four_hundred_days_do_not_stutter() {
        try (var visit = Visit.to(port, Look.PHONE_BY_DAY).signIn("owner")) {
            long began = System.nanoTime();
            Page page =
                    drawn(visit, "/sites/mesa-9/curves?points=water-tank&points=oil-tank&points=separator&span=P400D");
            System.out.printf("400 days of 3 points drawn after %d ms%n", (System.nanoTime() - began) / 1_000_000);
            var fingers = new Fingers(page, "#panels .u-over");
            page.evaluate("() => { window.frames_ = []; let last = performance.now();"
                    + " const step = (now) => { frames_.push(now - last); last = now; requestAnimationFrame(step); };"
                    + " requestAnimationFrame(step); }");
            for (int i = 0; i < 4; i++) {
                fingers.pinch(30, 120);
            }
            page.waitForCondition(() -> span(page) < 5 * 86400);
            double[] frames = ((List<?>) page.evaluate("frames_"))
                    .stream()
                            .mapToDouble(one -> ((Number) one).doubleValue())
                            .skip(2)
                            .sorted()
                            .toArray();
            double median = frames[frames.length / 2];
            double most = frames[frames.length * 95 / 100];
            System.out.printf(
                    "%d frames while zooming: median %.1f ms, 95 of 100 within %.1f ms, longest %.1f ms%n",
                    frames.length, median, most, DoubleStream.of(frames).max().orElse(0));
            Assertions.assertThat(most).isLessThan(MOST_MILLIS_A_FRAME);
        }
    }

    @Test
    void without_a_script_there_are_strips_sentences_and_tables() {
        try (var context = Chromium.browser()
                .newContext(new Browser.NewContextOptions()
                        .setBaseURL("http://localhost:" + port)
                        .setJavaScriptEnabled(false)
                        .setViewportSize(390, 844))) {
            Page page = context.newPage();
            page.navigate("/login");
            page.fill("input[name=username]", "owner");
            page.fill("input[name=password]", GatewayTest.PASSWORD);
            page.click("main button[type=submit]");
            page.navigate("/sites/mesa-9/curves?points=water-tank&points=separator&span=PT6H");
            assertThat(page.locator("svg.strip")).hasCount(2);
            assertThat(page.locator("#curves")).isHidden();
            page.locator("summary").first().click();
            assertThat(page.locator("table").first()).containsText("Lowest");
            page.screenshot(new Page.ScreenshotOptions()
                    .setFullPage(true)
                    .setPath(java.nio.file.Path.of("target/pages/curves-without-script.png")));
            page.locator(".without-script a").first().click();
            assertThat(page.locator("svg.strip")).hasCount(2);
        }
    }

    @Test
    void it_can_be_read_in_spanish() {
        try (var visit = Visit.inSpanish(port, Look.PHONE_AT_NIGHT).signIn("owner")) {
            Page page = drawn(visit, "/sites/mesa-9/curves?points=water-tank");
            assertThat(page.locator("#accounts")).containsText("WATER TANK: última");
            visit.check("curves-spanish");
        }
    }

    /** Asked for once the fingers have been still for a while; figures are also asked for while they move. */
    private static boolean words(Response answer) {
        return answer.url().contains("/curves?points=water-tank&span=PT");
    }

    private static double span(Page page) {
        return ((Number) page.evaluate("() => { const m = /span=PT(\\d+)S/.exec(location.search);"
                        + " const d = document.getElementById('curves').dataset;"
                        + " return m ? Number(m[1]) : d.to - d.from; }"))
                .doubleValue();
    }
}
