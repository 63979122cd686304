package yardlight.gateway.evidence;

import static java.time.Duration.ofSeconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/** The log as evidence, through the whole gateway: heads, proofs, the export, and the verifier that people are given. */
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = {
            "yardlight.heads.to=insurer@proof.example,partner@proof.example",
            "yardlight.heads.at=00:00",
            "yardlight.heads.zone=UTC"
        })
class EvidenceIT {

    private final Web web;
    private final JdbcTemplate jdbc;
    private final HeadMail mail;

    EvidenceIT(@LocalServerPort int port, @Autowired JdbcTemplate jdbc, @Autowired HeadMail mail) {
        this.web = new Web(port);
        this.jdbc = jdbc;
        this.mail = mail;
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
    }

    @BeforeEach
    void write_something_into_the_log() {
        assertThat(web.put("/api/v1/setup", "application/yaml", Documents.CONTRACT, Web.owner())
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void gives_the_head_a_proof_for_a_line_and_one_that_nothing_before_it_was_changed() {
        JsonNode before = json("/api/v1/log/head");
        write_something_into_the_log();
        JsonNode head = json("/api/v1/log/head");

        JsonNode proof = json("/api/v1/log/proof?line=1");

        assertThat(head.get("size").asLong()).isGreaterThan(before.get("size").asLong());
        assertThat(proof.get("size").asLong())
                .isGreaterThanOrEqualTo(head.get("size").asLong());
        assertThat(proof.get("entry").asString()).startsWith("{\"about\":{").contains("\"line\":1,");
        assertThat(proof.get("path").size()).isPositive();
        JsonNode consistency = json("/api/v1/log/consistency?first="
                + before.get("size").asLong() + "&second=" + head.get("size").asLong());
        assertThat(consistency.get("proof").size()).isPositive();
        JsonNode earlier =
                json("/api/v1/log/proof?line=1&size=" + before.get("size").asLong());
        assertThat(earlier.get("root").asString()).isEqualTo(before.get("root").asString());
    }

    @Test
    void says_which_parameter_is_wrong_and_what_it_must_be() {
        assertThat(refused("/api/v1/log/proof")).contains("line", "is needed, must be a whole number from 1 on");
        assertThat(refused("/api/v1/log/proof?line=0")).contains("must be a whole number from 1 on");
        assertThat(refused("/api/v1/log/proof?line=1&size=999999")).contains("size", "must be at most ");
        assertThat(refused("/api/v1/log/consistency?first=2&second=1")).contains("first", "must be at most second, 1");
        HttpResponse<String> unknown = web.get("/api/v1/log/proof?line=999999", Web.owner());
        assertThat(unknown.statusCode()).isEqualTo(404);
        assertThat(unknown.body()).contains("there is no line 999999 in the log");
    }

    /** What the one who asks later does: a mail that came some time ago, the export of today, and one Java file. */
    @Test
    void an_export_is_held_against_a_head_that_came_by_mail(@TempDir Path folder) throws Exception {
        mail.round();
        mail.round();

        await().atMost(ofSeconds(10)).until(() -> heads().size() == 2);
        assertThat(jdbc.queryForList("select address from sent_head order by address", String.class))
                .containsExactly("insurer@proof.example", "partner@proof.example");
        await().atMost(ofSeconds(10)).until(() -> logged("was mailed to address 2 of yardlight.heads.to"));
        String words = (String) heads().get(0).getContent();
        Files.writeString(
                folder.resolve("head.json"),
                words.lines().filter(line -> line.startsWith("{")).findFirst().orElseThrow());
        Files.copy(Path.of("..", "docs", "verify", "Verify.java"), folder.resolve("Verify.java"));
        write_something_into_the_log();

        assertThat(verify(folder)).startsWith("OK: lines 1 to ").contains("are those of the earlier head of ");

        jdbc.update("update log_line set words = words || '.' where line = 2");
        assertThat(verify(folder)).contains("line 2 was changed: its hash does not fit");
        jdbc.update("update log_line set words = substring(words, 1, length(words) - 1) where line = 2");
        assertThat(verify(folder)).startsWith("OK: ");
    }

    private boolean logged(String words) {
        return jdbc.queryForList("select words from log_line where what = 'head'", String.class).stream()
                .anyMatch(line -> line.contains(words));
    }

    private static List<MimeMessage> heads() {
        return Arrays.stream(WholeGateway.CARRIER.getReceivedMessages())
                .filter(EvidenceIT::isHead)
                .toList();
    }

    private static boolean isHead(MimeMessage message) {
        try {
            return message.getAllRecipients()[0].toString().endsWith("@proof.example");
        } catch (jakarta.mail.MessagingException e) {
            throw new IllegalStateException(e);
        }
    }

    private String verify(Path folder) throws IOException, InterruptedException {
        Files.writeString(
                folder.resolve("log.txt"),
                web.get("/api/v1/log/export", Web.owner()).body(),
                StandardCharsets.UTF_8);
        Process java = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "Verify.java",
                        "log.txt",
                        "head.json")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(java.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return said;
    }

    private JsonNode json(String path) {
        HttpResponse<String> response = web.get(path, Web.owner());
        assertThat(response.statusCode()).as(response.body()).isEqualTo(200);
        return Web.json(response);
    }

    private String refused(String path) {
        HttpResponse<String> response = web.get(path, Web.owner());
        assertThat(response.statusCode()).isEqualTo(422);
        return response.body();
    }
}
