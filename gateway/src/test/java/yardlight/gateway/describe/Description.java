package yardlight.gateway.describe;

import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.media.StringSchema;
import io.swagger.v3.oas.models.parameters.QueryParameter;
import io.swagger.v3.oas.models.security.SecurityRequirement;
import io.swagger.v3.oas.models.security.SecurityScheme;
import io.swagger.v3.oas.models.servers.Server;
import java.util.List;
import java.util.Map;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springdoc.core.customizers.OperationCustomizer;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;

/** What the description says beside the addresses: names, who may ask, and the bodies. */
@TestConfiguration(proxyBeanMethods = false)
class Description {

    private static final String PEOPLE = "login";
    private static final String KEYS = "key";
    private static final List<String> BY_KEY =
            List.of("POST /api/v1/events", "POST /api/v1/heartbeats", "POST /api/v1/readings", "POST /api/v1/replies");

    private static final Map<String, List<String>> QUERIES = Map.ofEntries(
            Map.entry("GET /api/v1/alarms", List.of("site", "state", "from", "to")),
            Map.entry("GET /api/v1/lines", List.of("contact")),
            Map.entry("GET /api/v1/coverage", List.of("site", "priority", "from", "to")),
            Map.entry("GET /api/v1/suggestions", List.of("site", "point")),
            Map.entry("GET /api/v1/readings", List.of("site", "point", "from", "to", "points")),
            Map.entry("GET /api/v1/log", List.of("from", "to", "site", "contact")),
            Map.entry("GET /api/v1/log/proof", List.of("line", "size")),
            Map.entry("GET /api/v1/log/consistency", List.of("first", "second")),
            Map.entry("GET /api/v1/reports/notification", List.of("alarm", "site", "from", "to")),
            Map.entry("GET /api/v1/reports/performance", List.of("site", "from", "to")),
            Map.entry("GET /api/v1/reports/burden", List.of("from", "to")));

    @Bean
    OpenAPI about() {
        var components = new Components()
                .addSecuritySchemes(
                        PEOPLE,
                        new SecurityScheme().type(SecurityScheme.Type.HTTP).scheme("basic"))
                .addSecuritySchemes(
                        KEYS,
                        new SecurityScheme().type(SecurityScheme.Type.HTTP).scheme("bearer"));
        var info = new Info()
                .title("Yardlight")
                .version("1")
                .description("Wakes the right person when an unattended place is in trouble. Everything that is wrong"
                        + " is answered with application/problem+json (RFC 9457).");
        return new OpenAPI().info(info).components(components).servers(List.of(new Server().url("/")));
    }

    /** Names operations after the feature that they belong to. */
    @Bean
    OperationCustomizer names() {
        return (operation, method) -> {
            String feature = method.getBeanType().getSimpleName().replace("Controller", "");
            operation.setTags(List.of(feature));
            operation.setOperationId(method.getMethod().getName() + feature);
            return operation;
        };
    }

    @Bean
    OpenApiCustomizer bodies() {
        return api -> api.getPaths().forEach(Description::complete);
    }

    private static void complete(String path, PathItem item) {
        item.readOperationsMap().forEach((method, operation) -> {
            String scheme = BY_KEY.contains(method + " " + path) ? KEYS : PEOPLE;
            operation.setSecurity(List.of(new SecurityRequirement().addList(scheme)));
            body(method + " " + path, operation);
        });
    }

    private static void body(String address, Operation operation) {
        Bodies.of(address).ifPresent(operation::setRequestBody);
        for (String name : QUERIES.getOrDefault(address, List.of())) {
            operation.addParametersItem(new QueryParameter().name(name).schema(new StringSchema()));
        }
    }
}
