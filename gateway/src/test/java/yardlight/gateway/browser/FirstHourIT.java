package yardlight.gateway.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Locale;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.Mails;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/**
 * From an empty gateway to the first text and its answer, and what an owner does with a box: in the browser, with the texts
 * in a real mail server and with what is to be pasted really run.
 */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.DEFINED_PORT)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class FirstHourIT {

    private static final Logger LOG = LoggerFactory.getLogger(FirstHourIT.class);
    private static final int PORT = free();
    private static final String JSON = "application/json";
    private static final String EMPTY = "{\"sites\": []}";

    private final Web web = new Web(PORT);
    private int clicks;

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
        registry.add("server.port", () -> PORT);
        // Where the browser and the pasted examples find it, and the links in the texts lead to.
        registry.add("yardlight.public-url", () -> "http://localhost:" + PORT);
    }

    private static int free() {
        try (var socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void setUp(String type, String document) {
        HttpResponse<String> stored = web.put("/api/v1/setup", type, document, Web.owner());
        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(200);
    }

    private void click(Locator button) {
        clicks++;
        button.click();
    }

    @Order(1)
    @ParameterizedTest
    @EnumSource(Look.class)
    void first_start_to_first_text(Look look) {
        if (setup().contains("id: mesa-9")) {
            setUp(JSON, EMPTY);
        }
        String phone = "575555010" + (look.ordinal() + 1) + "@txt.example";
        try (var visit = Visit.to(PORT, look)) {
            Page page = visit.open("/login");
            page.fill("input[name=username]", "owner");
            page.fill("input[name=password]", GatewayTest.PASSWORD);
            long began = System.nanoTime();
            click(page.locator("main button[type=submit]"));
            page.waitForURL("**/start");

            you(visit, "Ana " + look.word(), phone);
            site(visit);
            box(visit, "Pump house box " + look.word());
            ladder(visit);
            visit.check("start-test");
            click(page.locator("form[action='/start/test'] button"));
            String link = Mails.link(Mails.textTo(phone, "Yardlight test"));
            Duration toText = Duration.ofNanos(System.nanoTime() - began);
            answer(look, link);

            assertThat(page.locator("#proven")).isVisible();
            visit.check("start-done");
            click(page.locator("a.large"));
            assertThat(page.locator("#now")).containsText("Mesa 9");
            LOG.warn("first start to first text, {}: {} clicks, {} s", look.word(), clicks, toText.toSeconds());
            assertThat(toText).isLessThan(Duration.ofMinutes(5));
            assertThat(clicks).isLessThanOrEqualTo(10);
        }
    }

    private void you(Visit visit, String name, String phone) {
        Page page = visit.page();
        assertThat(page.locator("select[name=zone]")).hasValue("America/Chicago");
        page.fill("input[name=name]", name);
        page.selectOption("select[name=channel]", "sms-mail");
        page.fill("input[name=address]", "not an address");
        click(page.locator("form[action='/start/you'] button"));
        assertThat(page.locator("#address-wrong")).isVisible();
        assertThat(page.locator("input[name=address]")).hasAttribute("aria-invalid", "true");
        assertThat(page.locator("input[name=name]")).hasValue(name);
        visit.check("start-you");
        page.fill("input[name=address]", phone);
        click(page.locator("form[action='/start/you'] button"));
    }

    private void site(Visit visit) {
        Page page = visit.page();
        page.fill("input[name=name]", "Mesa 9");
        assertThat(page.locator("select[name=zone]")).hasValue("America/Chicago");
        visit.check("start-site");
        // Left in the middle, and come back to.
        visit.open("/");
        page.waitForURL("**/start");
        page.fill("input[name=name]", "Mesa 9");
        click(page.locator("form[action='/start/site'] button"));
    }

    private void box(Visit visit, String name) {
        Page page = visit.page();
        assertThat(page.locator("input[name=name]")).hasValue("Mesa 9 box");
        page.fill("input[name=name]", name);
        click(page.locator("form[action='/start/box'] button"));
        String key = page.locator("#key").innerText().strip();
        assertThat(page.locator("#posts")).containsText("Nothing has come in");

        String printed = Pasted.sh(page.locator("pre").first().textContent());

        assertThat(printed).contains("\"outcome\":\"noted\"", "\"next\":\"PT1M\"");
        assertThat(page.locator("#posts")).containsText("water-tank high-high normal");
        assertThat(page.locator("#posts")).containsText("battery 12.7 V");
        web.post("/api/v1/events", JSON, "{\"point\": \"" + key + "\"", "Authorization", "Bearer " + key);
        assertThat(page.locator("#posts")).containsText("refused");
        assertThat(page.locator("#posts")).not().containsText(key.substring(0, 24));
        visit.check("start-box");
        click(page.locator("a.large"));
    }

    private void ladder(Visit visit) {
        Page page = visit.page();
        page.selectOption("select[name=wait]", "PT10M");
        visit.check("start-ladder");
        click(page.locator("form[action='/start/ladder'] button"));
        page.waitForURL("**/start?step=test");
        assertThat(setup()).contains("PT10M", "again: 3", "pump-house-box");
    }

    /** In YAML, whatever it is kept as. */
    private String setup() {
        return web.get("/api/v1/setup", "Accept", "application/yaml", "Authorization", Web.owner()[1])
                .body();
    }

    private void answer(Look look, String link) {
        try (var phone = Visit.to(PORT, look)) {
            phone.open(link);
            phone.check("answer-test");
            phone.page().click("main button");
            assertThat(phone.page().locator("main")).containsText("this line works");
        }
    }

    @Order(2)
    @ParameterizedTest
    @EnumSource(Look.class)
    void acknowledge_from_a_text(Look look) {
        setUp("application/yaml", Documents.CONTRACT);
        String point = "tank-" + look.word();
        String key = key();
        web.post(
                "/api/v1/events",
                JSON,
                "{\"point\": \"" + point + "\", \"condition\": \"high-high\", \"state\": \"active\","
                        + " \"priority\": \"critical\", \"value\": 18.4, \"limit\": 18.0, \"unit\": \"ft\"}",
                "Authorization",
                "Bearer " + key);
        String link = Mails.link(Mails.textTo(
                "5755550101@txt.example", point.toUpperCase(Locale.ROOT).replace('-', ' ')));

        try (var phone = Visit.to(PORT, look)) {
            phone.open(link);
            phone.check("answer");
            assertThat(state(point)).isEqualTo("unacknowledged");
            phone.page().click("main button");
            assertThat(phone.page().locator("main button")).hasCount(0);
            phone.check("answered");
        }
        assertThat(state(point)).isEqualTo("acknowledged");
    }

    private String state(String point) {
        return Web.json(web.get("/api/v1/alarms/mesa-9." + point + ".high-high.1", Web.owner()))
                .get("state")
                .asString();
    }

    private String key() {
        return Web.json(web.post("/api/v1/boxes/mesa-9-box/keys", JSON, "", Web.owner()))
                .get("key")
                .asString();
    }

    @Order(3)
    @ParameterizedTest
    @EnumSource(Look.class)
    void revoke_a_box_key(Look look) {
        setUp("application/yaml", Documents.CONTRACT);
        try (var visit = Visit.to(PORT, look).signIn("owner")) {
            Page page = visit.open("/boxes");
            page.fill("input[name=name]", "Pump house " + look.word());
            visit.check("boxes");
            page.click("form[action='/boxes'] button");
            String id = "pump-house-" + look.word();
            page.waitForURL("**/boxes/" + id);

            String first = made(page);
            assertThat(Pasted.microPython(page.locator("pre").nth(1).textContent()))
                    .startsWith("202");
            assertThat(page.locator("#posts")).containsText("heartbeats");
            visit.check("box-key");
            visit.open("/boxes/" + id);
            assertThat(page.locator("main")).not().containsText(first);
            page.selectOption("select[name=others]", "hour");
            String second = made(page);
            assertThat(status(first)).isEqualTo(202);
            assertThat(status(second)).isEqualTo(202);
            visit.open("/boxes/" + id);
            assertThat(page.locator(".key").first()).containsText("Last used");
            assertThat(page.locator(".key").last()).containsText("Ends");
            visit.check("box");

            page.locator("form[action$='/revoke'] button").first().click();

            assertThat(page.locator(".key").last()).containsText("Revoked");
            assertThat(status(second)).isEqualTo(401);
            assertThat(status(first)).isEqualTo(202);
        }
    }

    /** The key that the page shows after the button was pressed. */
    private static String made(Page page) {
        page.click("form[action$='/keys'] button");
        return page.locator("#key").innerText().strip();
    }

    private int status(String key) {
        return web.post("/api/v1/heartbeats", JSON, "{\"battery\": 12.6}", "Authorization", "Bearer " + key)
                .statusCode();
    }

    @Order(4)
    @ParameterizedTest
    @EnumSource(Look.class)
    void the_second_who_edits_a_box_sees_what_the_first_one_changed(Look look) {
        setUp("application/yaml", Documents.CONTRACT);
        try (var visit = Visit.inSpanish(PORT, look).signIn("owner")) {
            Page page = visit.open("/boxes/mesa-9-box");
            page.fill("input[name=feed]", "pump");
            setUp("application/yaml", Documents.CONTRACT.replace("feed: wells", "feed: mains"));

            Locator save = page.locator("form[action='/boxes/mesa-9-box'] button");
            save.click();

            assertThat(page.locator(".changed")).containsText("\"wells\"");
            assertThat(page.locator(".changed")).containsText("\"mains\"");
            assertThat(page.locator("input[name=feed]")).hasValue("pump");
            visit.check("box-overtaken");
            save.click();
            assertThat(page.locator(".changed")).hasCount(0);
            assertThat(web.get("/api/v1/setup", Web.owner()).body()).contains("feed: pump", "link: hub");
        }
    }
}
