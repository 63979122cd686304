package yardlight.gateway.boxes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/** The examples of signed posts in docs/api.md, run as they stand there, against a gateway and a box that demands it. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class SignedExamplesIT {

    private static final String DRIVER = """

        import sys, time
        body = sys.argv[3].encode()
        for name, value in signed(sys.argv[1], sys.argv[2], "/api/v1/events", body, int(time.time())).items():
            print(name)
            print(value)
        """;

    @TempDir
    private Path folder;

    private final Web web;
    private String key;
    private String keyId;

    SignedExamplesIT(@LocalServerPort int port) {
        this.web = new Web(port);
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
    }

    @BeforeEach
    void set_up() {
        String document = Documents.CONTRACT.replace("{id: mesa-9-box,", "{id: mesa-9-box, signed: true,");
        assertThat(web.put("/api/v1/setup", "application/yaml", document, Web.owner())
                        .statusCode())
                .isEqualTo(200);
        JsonNode made = Web.json(web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner()));
        key = made.get("key").asString();
        keyId = made.get("id").asString();
    }

    @Test
    void with_curl_and_openssl() throws Exception {
        assumeTrue(
                there("curl") && there("openssl") && there("bash"), "SKIPPED: curl, openssl and bash are not all here");
        Map<String, String> given = Map.of("KEY", key, "KEYID", keyId, "Y", "http://127.0.0.1:" + web.port());

        String said = run(given, List.of("bash", "-c", example("signed-curl")));
        String again = run(given, List.of("bash", "-c", example("signed-curl")));

        assertThat(said).contains("\"outcome\":\"occurred\"");
        assertThat(again).contains("\"outcome\":\"repeated\"");
    }

    @Test
    void with_micropython_or_python() throws Exception {
        Optional<String> python = Stream.of("micropython", "python3")
                .filter(SignedExamplesIT::there)
                .findFirst();
        assumeTrue(python.isPresent(), "SKIPPED: neither micropython nor python3 is here");
        Path script = Files.writeString(folder.resolve("signed.py"), example("signed-python") + DRIVER);
        String body = "{\"point\": \"separator\", \"condition\": \"high\", \"state\": \"active\"}";

        String said = run(Map.of(), List.of(python.get(), script.toString(), key, keyId, body));

        String[] headers = said.lines()
                .filter(line -> !line.isBlank())
                .dropWhile(line -> !line.equals("Content-Type"))
                .toArray(String[]::new);
        HttpResponse<String> answer = web.post("/api/v1/events", "application/json", body, withoutType(headers));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(202);
        assertThat(web.post("/api/v1/events", "application/json", body, withoutType(headers))
                        .statusCode())
                .isEqualTo(401);
    }

    private static String[] withoutType(String... headers) {
        var others = new java.util.ArrayList<String>();
        for (int i = 0; i < headers.length; i += 2) {
            if (!headers[i].equals("Content-Type")) {
                others.addAll(List.of(headers[i], headers[i + 1]));
            }
        }
        return others.toArray(String[]::new);
    }

    /** The block of code behind the mark. */
    private static String example(String mark) throws IOException {
        String text = Files.readString(Path.of("..", "docs", "api.md"));
        int from = text.indexOf("```\n", text.indexOf("<!-- " + mark + " -->")) + 4;
        return text.substring(from, text.indexOf("\n```", from) + 1);
    }

    private static boolean there(String program) {
        return Stream.of(System.getenv("PATH").split(":"))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }

    private static String run(Map<String, String> given, List<String> command)
            throws IOException, InterruptedException {
        var builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().putAll(given);
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        return said;
    }
}
