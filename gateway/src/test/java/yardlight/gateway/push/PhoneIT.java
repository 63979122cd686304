package yardlight.gateway.push;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import yardlight.channels.push.StandInService;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/** The owner adds a phone to somebody's lines, through the whole gateway. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class PhoneIT {

    private static final StandInService SERVICE = service();

    private final Web web;

    @Autowired
    PhoneIT(@LocalServerPort int port) {
        this.web = new Web(port);
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
        registry.add("yardlight.push.contact", () -> "mailto:yard@ranch.example");
        registry.add("yardlight.push.allow-loopback", () -> "true");
    }

    @AfterAll
    static void close() {
        SERVICE.close();
    }

    @BeforeEach
    void set_up() {
        assertThat(web.put("/api/v1/setup", "application/yaml", Documents.CONTRACT, Web.owner())
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void it_is_their_last_line_and_the_rest_of_the_document_stays_as_it_was_written() {
        HttpResponse<String> added = add("ben", SERVICE.subscription());

        assertThat(added.statusCode()).as(added.body()).isEqualTo(303);
        assertThat(added.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).endsWith("/people/ben"));
        assertThat(setup())
                .isEqualTo(Documents.CONTRACT.replace(
                        "5755550102@txt.example}",
                        "5755550102@txt.example}, {\"channel\": \"push\", \"address\": \"" + SERVICE.subscription()
                                + "\"}"));
        assertThat(web.get("/people/ben", with("Accept", "text/html")).body()).contains("line 2 (push)");
    }

    @Test
    void it_is_in_the_log_as_the_change_of_the_setup_that_it_is() {
        add("ben", SERVICE.subscription());

        assertThat(web.get("/api/v1/log", with("Accept", "text/csv")).body().lines())
                .filteredOn(line -> line.contains("setup") && line.contains("owner"))
                .hasSizeGreaterThanOrEqualTo(2);
    }

    @Test
    void the_same_phone_is_not_added_twice() {
        add("ben", SERVICE.subscription());
        String once = setup();

        assertThat(add("ben", SERVICE.subscription()).statusCode()).isEqualTo(303);

        assertThat(setup()).isEqualTo(once);
    }

    @Test
    void what_the_channel_does_not_take_is_not_stored() {
        HttpResponse<String> refused = add("ben", "https://10.0.0.1/p/1|KEY|AUTH");

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("not a subscription as endpoint|p256dh|auth");
        assertThat(setup()).isEqualTo(Documents.CONTRACT);
    }

    @Test
    void somebody_who_is_not_there_gets_none() {
        assertThat(add("cleo", SERVICE.subscription()).statusCode()).isEqualTo(404);
    }

    @Test
    void a_page_elsewhere_cannot_have_the_owner_s_browser_do_it() {
        HttpResponse<String> forged = add("ben", SERVICE.subscription(), "Origin", "https://elsewhere.example");

        assertThat(forged.statusCode()).isEqualTo(403);
        assertThat(setup()).isEqualTo(Documents.CONTRACT);
    }

    private HttpResponse<String> add(String contact, String address, String... headers) {
        String form = "contact=" + contact + "&address=" + URLEncoder.encode(address, StandardCharsets.UTF_8);
        return web.post("/phone/lines", "application/x-www-form-urlencoded", form, with(headers));
    }

    private String setup() {
        return web.get("/api/v1/setup", Web.owner()).body();
    }

    private static String[] with(String... headers) {
        String[] all = new String[headers.length + 2];
        System.arraycopy(Web.owner(), 0, all, 0, 2);
        System.arraycopy(headers, 0, all, 2, headers.length);
        return all;
    }

    private static StandInService service() {
        try {
            return new StandInService();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
