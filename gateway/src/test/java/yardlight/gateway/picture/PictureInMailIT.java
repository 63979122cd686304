package yardlight.gateway.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;
import yardlight.gateway.strip.Stored;

/** Calls by mail of a whole gateway, as a mail server that is not written here (GreenMail) got them. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class PictureInMailIT {

    private static final String SETUP = Documents.CONTRACT.replace(
            "{channel: sms-mail, address: 5755550101@txt.example}, {channel: mail, address: ana@mesa.example}",
            "{channel: mail, address: ana@mesa.example}, {channel: sms-mail, address: 5755550101@txt.example}");
    private static int last;

    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final Web web;
    private final JdbcTemplate jdbc;
    private final String key;
    private final int number = ++last;

    @Autowired
    PictureInMailIT(@LocalServerPort int port, JdbcTemplate jdbc) {
        this.web = new Web(port);
        this.jdbc = jdbc;
        web.put("/api/v1/setup", "application/yaml", SETUP, Web.owner());
        key = Web.json(web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner()))
                .get("key")
                .asString();
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
    }

    @BeforeEach
    void nothing_has_come() throws Exception {
        WholeGateway.CARRIER.purgeEmailFromAllMailboxes();
        Stored.forget(jdbc);
    }

    @AfterEach
    void it_is_over() {
        event("normal");
        String alarm = "/api/v1/alarms/mesa-9.tank-" + number + ".high-high.1/acknowledge";
        web.post(alarm, "application/json", "{}", Web.owner());
        jdbc.execute("alter table if exists reading_away rename to reading");
    }

    private void read(Duration step, Duration before) {
        Instant now = Instant.now();
        Stored.every(
                jdbc,
                new Stored.Series(1, "mesa-9", "tank-" + number, "ft"),
                step,
                now.minus(before),
                now,
                at -> 18.4 - Duration.between(at, now).toSeconds() / 1800.0);
    }

    private void event(String state) {
        web.post(
                "/api/v1/events",
                "application/json",
                "{\"point\": \"tank-" + number + "\", \"condition\": \"high-high\", \"state\": \"" + state
                        + "\", \"priority\": \"critical\", \"value\": 18.4, \"limit\": 18.0, \"unit\": \"ft\"}",
                "Authorization",
                "Bearer " + key);
    }

    private MimeMessage called() {
        event("active");
        await().atMost(Duration.ofSeconds(20)).until(() -> !toAna().isEmpty());
        return toAna().get(0);
    }

    private List<MimeMessage> toAna() {
        return Stream.of(WholeGateway.CARRIER.getReceivedMessages())
                .filter(mail -> {
                    try {
                        return mail.getAllRecipients()[0].toString().equals("ana@mesa.example")
                                && mail.getSubject().contains("TANK " + number + " HIGH-HIGH");
                    } catch (jakarta.mail.MessagingException e) {
                        throw new AssertionError(e);
                    }
                })
                .toList();
    }

    @Test
    void a_call_brings_the_curve_of_the_hour_and_says_what_it_shows() throws Exception {
        read(MINUTE, Duration.ofHours(3));

        MimeMessage mail = called();

        var parts = (MimeMultipart) mail.getContent();
        assertThat((String) parts.getBodyPart(0).getContent())
                .startsWith("MESA 9 TANK " + number + " HIGH-HIGH 18.4 ft")
                .containsPattern("The picture: .* to .*\\. TANK \\d: last 18\\.\\d+ ft");
        byte[] png = parts.getBodyPart(1).getInputStream().readAllBytes();
        Files.createDirectories(Path.of("target/pages"));
        Files.write(Path.of("target/pages/mail-curve.png"), png);
        assertThat(png.length).isLessThan(30_000);
        BufferedImage image = ImageIO.read(parts.getBodyPart(1).getInputStream());
        assertThat(List.of(image.getWidth(), image.getHeight())).containsExactly(600, 300);
    }

    @Test
    void a_slow_point_brings_a_longer_curve() throws Exception {
        read(Duration.ofMinutes(30), Duration.ofHours(20));

        MimeMessage mail = called();

        assertThat(((MimeMultipart) mail.getContent()).getCount()).isEqualTo(2);
    }

    @Test
    void a_call_about_a_point_without_readings_is_plain() throws Exception {
        MimeMessage mail = called();

        assertThat(mail.isMimeType("text/plain")).isTrue();
    }

    @Test
    void a_call_goes_out_plain_and_at_once_when_the_readings_cannot_be_had() throws Exception {
        read(MINUTE, Duration.ofHours(3));
        jdbc.execute("alter table reading rename to reading_away");

        MimeMessage mail = called();

        assertThat(mail.isMimeType("text/plain")).isTrue();
        assertThat((String) mail.getContent()).startsWith("MESA 9 TANK " + number + " HIGH-HIGH 18.4 ft");
    }
}
