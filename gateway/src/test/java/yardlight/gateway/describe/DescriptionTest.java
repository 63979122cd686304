package yardlight.gateway.describe;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.springframework.context.annotation.Import;
import org.springframework.http.HttpMethod;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;

/** The description that the gateway carries, against the one that springdoc makes of the controllers as they are now. */
@GatewayTest
@Import(Description.class)
@TestPropertySource(
        properties = {
            "springdoc.api-docs.enabled=true",
            "springdoc.api-docs.path=/described",
            "springdoc.api-docs.version=openapi_3_1",
            "springdoc.paths-to-match=/api/v1/**",
            "springdoc.default-produces-media-type=application/json",
            "springdoc.writer-with-order-by-keys=true",
            "springdoc.writer-with-default-pretty-printer=true"
        })
class DescriptionTest {

    private static final Path MADE = Path.of("target", "api.json");

    private final Doors doors;
    private final JsonMapper json = new JsonMapper();

    DescriptionTest(Doors doors) {
        this.doors = doors;
    }

    @Test
    void says_what_the_doors_are() throws IOException {
        String made = body("/described") + "\n";
        Files.writeString(MADE, made);

        assertThat(json.readTree(body("/v3/api-docs")))
                .as("a door has changed: look at %s, and copy it over src/main/resources/api.json", MADE)
                .isEqualTo(json.readTree(made));
    }

    @Test
    void says_the_same_in_yaml() throws IOException {
        JsonNode yaml = new YAMLMapper().readTree(body("/v3/api-docs.yaml"));

        assertThat(yaml).isEqualTo(json.readTree(body("/v3/api-docs")));
    }

    private String body(String address) {
        MvcTestResult answer = doors.as("owner", HttpMethod.GET, address).exchange();
        assertThat(answer).hasStatusOk();
        return new String(answer.getResponse().getContentAsByteArray(), StandardCharsets.UTF_8);
    }
}
