package yardlight.gateway.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/** The owner reads the cautions one by one and turns it on; somebody asks by keyboard, and somebody by holding the button. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class ShutInPagesIT {

    private static final String PAGE = "/sites/mesa-9/shut-in";

    private final int port;
    private final Web web;

    @Autowired
    ShutInPagesIT(@LocalServerPort int port) {
        this.port = port;
        this.web = new Web(port);
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
    }

    @BeforeEach
    void set_up() {
        web.put("/api/v1/setup", "application/yaml", Documents.CONTRACT, Web.owner());
        String document =
                Documents.CONTRACT.replace("ladder: night}]\n", "ladder: night, shutIn: {box: mesa-9-box}}]\n");
        web.put("/api/v1/setup", "application/yaml", document, Web.owner());
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void turn_it_on_ask_and_turn_it_off(Look look) {
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open("/sites/mesa-9");
            page.click("#shut-in");
            assertThat(page.locator("main")).containsText("Off: this site cannot be asked to shut in.");
            visit.check("shut-in-off");
            page.click("text=Read what it means, and turn it on");
            for (int i = 1; i <= 5; i++) {
                assertThat(page.locator("main")).containsText("Page " + i + " of 5");
                if (i == 3) {
                    visit.check("shut-in-caution");
                }
                page.click("#next");
            }
            assertThat(page.locator("main")).containsText("This asks the site to stop.");
            visit.check("shut-in-on");
            page.fill("#name", "Mesa 9");
            page.click("#on");
            assertThat(page.locator("main")).containsText("On: this site can be asked to shut in.");
            visit.check("shut-in");

            byKeyboard(page, visit);
            page.click("#off");
            assertThat(page.locator("#stands")).containsText("Taken back");
            assertThat(page.locator("#ask")).hasCount(0);
        }
    }

    private static void byKeyboard(Page page, Visit visit) {
        page.fill("#name", "mesa 9");
        page.locator("#hold").press("Enter");
        assertThat(page.locator("#sure")).containsText("Once more: ask Mesa 9 to shut in now?");
        visit.check("shut-in-sure");
        page.locator("#yes").press("Enter");
        assertThat(page.locator("#stands")).containsText("nothing has gone to the site yet");
        visit.check("shut-in-asked");
    }

    @ParameterizedTest
    @EnumSource(
            value = Look.class,
            names = {"PHONE_BY_DAY"})
    void a_short_press_does_nothing_and_a_long_one_asks(Look look) {
        try (var visit = Visit.to(port, look).signIn("owner")) {
            Page page = visit.open(PAGE + "/on?step=6");
            page.fill("#name", "Mesa 9");
            page.click("#on");
            page.fill("#name", "Mesa 9");
            // A press that was short takes a busy machine longer.
            Object held = page.locator("#hold")
                    .evaluate("button => { const held = button.dataset.hold;"
                            + " button.dataset.hold = 60000; return held; }");
            page.click("#hold");
            assertThat(page.locator("#ask")).isVisible();
            assertThat(page.locator("#sure")).hasCount(0);

            page.locator("#hold").evaluate("(button, held) => { button.dataset.hold = held; }", held);
            page.locator("#hold").hover();
            page.mouse().down();
            assertThat(page.locator("#stands")).containsText("nothing has gone to the site yet");
            page.mouse().up();
        }
    }
}
