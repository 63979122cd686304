package yardlight.gateway.describe;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.springframework.core.io.ClassPathResource;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** Gives out the description that was made when the gateway was built, so that no start has to pay for it. */
@RestController
class ApiController {

    private static final String YAML = "application/vnd.oai.openapi";

    private final JsonMapper json;

    ApiController(JsonMapper json) {
        this.json = json;
    }

    @GetMapping(path = "/v3/api-docs", produces = MediaType.APPLICATION_JSON_VALUE)
    byte[] json() throws IOException {
        return new ClassPathResource("api.json").getContentAsByteArray();
    }

    @GetMapping(path = "/v3/api-docs.yaml", produces = YAML)
    byte[] yaml() throws IOException {
        return new YAMLMapper().writeValueAsString(json.readTree(json())).getBytes(StandardCharsets.UTF_8);
    }
}
