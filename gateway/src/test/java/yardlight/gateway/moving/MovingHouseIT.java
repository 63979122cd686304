package yardlight.gateway.moving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.GreenMailUtil;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.JarGateway;
import yardlight.gateway.Web;
import yardlight.gateway.setup.Documents;

/**
 * The packaged gateway in the middle of a call, from H2 to PostgreSQL and back: the call goes on, nobody is told twice, keys,
 * passwords, links and readings are those from before, and a head that left the first house vouches for the log in the last.
 */
class MovingHouseIT {

    private static final String FORM = "application/x-www-form-urlencoded";
    private static final String JSON = "application/json";
    private static final String EVENT =
            "id=night-1&point=water-tank&condition=high-high&state=active&value=18.4&limit=18.0&unit=ft";
    private static final Pattern LINK = Pattern.compile("https://yl\\.example(/a/[A-Za-z0-9_-]{22})");
    /** Of the call itself; who hears later that somebody has it is not told this. */
    private static final String CALL = "WATER TANK HIGH-HIGH 18.4 ft";

    private static final String ANA = "5755550101@txt.example";
    private static final String BEN = "5755550102@txt.example";

    /** Ben is called when she does not answer, and by then the gateway has moved. */
    private static final String SETUP = Documents.CONTRACT
            .replace("{call: [ana], wait: PT5M, rounds: 2}", "{call: [ana], wait: PT30S}")
            .replace("{call: [\"roster:crew\"], wait: PT5M}", "{call: [ben], wait: PT15M}");

    private final GreenMail carrier = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));

    @TempDir
    private Path folder;

    private String key;
    private String link;

    @BeforeEach
    void start() {
        carrier.start();
    }

    @AfterEach
    void stop() {
        carrier.stop();
    }

    @Test
    void everything_goes_on_in_another_database_and_back_again() throws Exception {
        Stand old = stand(TestDatabase.H2, "old");
        Stand middle = stand(TestDatabase.POSTGRESQL, "middle");
        Stand fresh = stand(TestDatabase.H2, "fresh");
        Path first = folder.resolve("first.zip");
        Path second = folder.resolve("second.zip");
        try (JarGateway gateway = old.ready()) {
            live(gateway.web());
        }
        assertThat(old.moveOut(first))
                .contains("is whole after", "private keys", "do not start this gateway again")
                .doesNotContain("Started YardlightApplication");

        try (JarGateway gateway = middle.ready(Stand.from(first))) {
            assertThat(gateway.said()).contains("moved here by first.zip", "must not be started again");
            goesOn(gateway.web());
        }
        try (JarGateway gateway = middle.ready(Stand.from(first))) {
            assertThat(gateway.said()).contains("was moved in at an earlier start and is not again");
            assertThat(post(gateway.web(), EVENT.replace("night-1", "night-2")).statusCode())
                    .isEqualTo(202);
        }
        middle.moveOut(second);

        try (JarGateway gateway = fresh.ready(Stand.from(second))) {
            isThere(gateway.web());
        }
        assertThat(textsTo(ANA, CALL)).hasSize(1);
        assertThat(textsTo(BEN, CALL)).hasSize(1);
    }

    /** A box, a person, a setup, a reading, an alarm whose first call is out, and a head that leaves the house. */
    private void live(Web web) throws IOException {
        assertThat(web.put("/api/v1/setup", "application/yaml", SETUP, Web.owner())
                        .statusCode())
                .isEqualTo(200);
        key = Web.json(web.post("/api/v1/boxes/mesa-9-box/keys", JSON, "", Web.owner()))
                .get("key")
                .asString();
        String rita = "{\"role\": \"reader\", \"password\": \"" + GatewayTest.PASSWORD + "\"}";
        assertThat(web.put("/api/v1/logins/rita", JSON, rita, Web.owner()).statusCode())
                .isLessThan(300);
        HttpResponse<String> reading = web.post(
                "/api/v1/readings", FORM, "point=water-tank&value=12.4&unit=ft", "Authorization", "Bearer " + key);
        assertThat(reading.statusCode()).isEqualTo(202);
        assertThat(post(web, EVENT).body()).contains("\"occurred\"");
        String text = await().atMost(Duration.ofSeconds(20))
                .until(() -> textsTo(ANA, CALL), texts -> !texts.isEmpty())
                .get(0);
        Matcher found = LINK.matcher(text);
        assertThat(found.find()).as(text).isTrue();
        link = found.group(1);
        await().atMost(Duration.ofSeconds(20)).until(() -> alarm(web).contains("\"handed-over\""));
        Files.writeString(
                folder.resolve("head.json"),
                web.get("/api/v1/log/head", Web.owner()).body());
    }

    private void goesOn(Web web) {
        assertThat(post(web, EVENT).body()).contains("\"duplicate\"");
        assertThat(web.get("/api/v1/alarms", "Authorization", Doors.basic("rita"))
                        .statusCode())
                .isEqualTo(200);
        await().atMost(Duration.ofSeconds(60)).until(() -> !textsTo(BEN, CALL).isEmpty());
        assertThat(web.get(link).body()).contains("I have it");
        assertThat(web.post(link, FORM, "").statusCode()).isEqualTo(303);
        assertThat(alarm(web)).contains("\"acknowledged\"", "\"acknowledgedBy\":\"ana\"");
        assertThat(post(web, "point=separator&condition=high&state=active&priority=low")
                        .statusCode())
                .isEqualTo(202);
    }

    private void isThere(Web web) throws Exception {
        assertThat(alarm(web)).contains("\"acknowledged\"", "\"acknowledgedBy\":\"ana\"");
        assertThat(web.get("/api/v1/alarms/mesa-9.separator.high.1", Web.owner())
                        .statusCode())
                .isEqualTo(200);
        assertThat(web.get("/api/v1/readings?site=mesa-9&point=water-tank", Web.owner())
                        .body())
                .contains("12.4");
        assertThat(post(web, EVENT).body()).contains("\"duplicate\"");
        assertThat(web.get("/api/v1/log", Web.owner()).body())
                .contains("moved here by first.zip", "moved here by second.zip");
        Files.writeString(
                folder.resolve("log.txt"),
                web.get("/api/v1/log/export", Web.owner()).body(),
                StandardCharsets.UTF_8);
        assertThat(verify()).startsWith("OK: lines 1 to ").contains("are those of the earlier head");
    }

    @Test
    void a_crate_that_was_changed_is_refused_in_words() throws IOException {
        Path file = Files.writeString(folder.resolve("crate.zip"), "half a crate");
        for (TestDatabase database : TestDatabase.values()) {
            Stand fresh = stand(database, "refused-" + database);

            JarGateway refused = fresh.begin(Stand.from(file));

            assertThat(refused.exitCode()).isEqualTo(1);
            assertThat(refused.said())
                    .contains("Nothing was moved, and nothing was changed: yardlight.move-in-from=" + file
                            + ": it cannot be read, or is damaged");
        }
    }

    @Test
    void nothing_moves_out_while_a_gateway_runs() throws IOException {
        String url = TestDatabase.POSTGRESQL.newUrl();
        Path crate = folder.resolve("crate.zip");
        Path home = Files.createDirectory(folder.resolve("running"));
        var stand = new Stand(home, List.of("--spring.datasource.url=" + url, "--spring.datasource.username=postgres"));
        try (JarGateway running = stand.ready()) {
            JarGateway refused = stand.begin("--yardlight.move-out-to=" + crate);

            assertThat(refused.exitCode()).isEqualTo(1);
            assertThat(refused.said()).contains("another gateway has the database open");
            assertThat(running.web().get("/api/v1/log/head", Web.owner()).statusCode())
                    .isEqualTo(200);
        }
        assertThat(crate).doesNotExist();
        stand.moveOut(crate);
        try (var source = TestDatabase.POSTGRESQL.migrated(url)) {
            assertThat(new JdbcTemplate(source).queryForObject("select count(*) from person", Integer.class))
                    .isOne();
        }
    }

    private Stand stand(TestDatabase database, String name) {
        return Stand.on(
                database,
                folder.resolve(name),
                "--yardlight.public-url=https://yl.example",
                "--yardlight.mail.from=yard@ranch.example",
                "--spring.mail.host=127.0.0.1",
                "--spring.mail.port=" + carrier.getSmtp().getPort());
    }

    private HttpResponse<String> post(Web web, String fields) {
        return web.post("/api/v1/events", FORM, fields, "Authorization", "Bearer " + key);
    }

    private static String alarm(Web web) {
        return web.get("/api/v1/alarms/mesa-9.water-tank.high-high.1", Web.owner())
                .body();
    }

    private List<String> textsTo(String address, String word) {
        return Arrays.stream(carrier.getReceivedMessages())
                .filter(mail -> to(mail).equals(address))
                .map(GreenMailUtil::getBody)
                .filter(text -> text.contains(word))
                .toList();
    }

    private static String to(MimeMessage mail) {
        try {
            return mail.getAllRecipients()[0].toString();
        } catch (jakarta.mail.MessagingException e) {
            throw new IllegalStateException(e);
        }
    }

    private String verify() throws IOException, InterruptedException {
        Path verifier = Path.of("..", "docs", "verify", "Verify.java").toAbsolutePath();
        Process java = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        verifier.toString(),
                        "log.txt",
                        "head.json")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(java.waitFor(1, TimeUnit.MINUTES)).isTrue();
        return said;
    }
}
