package yardlight.demo.bench;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.core.env.Environment;
import org.springframework.web.servlet.function.RouterFunction;
import org.springframework.web.servlet.function.RouterFunctions;
import org.springframework.web.servlet.function.ServerRequest;
import org.springframework.web.servlet.function.ServerResponse;
import tools.jackson.databind.json.JsonMapper;
import yardlight.demo.gateway.FreePort;
import yardlight.demo.gateway.GatewayProcess;
import yardlight.demo.gateway.Launch;

/**
 * What the gateway is held against, on the server that the gateway runs on, with its threads and its options: an endpoint
 * that looks up the box's key, reads the event, checks it and answers 202 with nothing stored, and the plain way to store
 * it. In a process of its own, so that neither shares a heap or a compiler with anything else.
 */
@EnableAutoConfiguration
class LimitServer {

    static final String BARE = "/bare";
    static final String PLAIN = "/plain";
    private static final String MARK = "demo.bench.limits";
    private static final String PATTERN = "demo.bench.pattern";
    private static final String BOXES = "demo.bench.boxes";

    static boolean wanted(String... args) {
        return Stream.of(args).anyMatch(arg -> arg.startsWith("--" + MARK + "="));
    }

    static void run(String... args) {
        SpringApplication.run(LimitServer.class, args);
    }

    /**
     * Starts one.
     *
     * @param pattern a home in which a gateway has stored one new alarm; its file is used up
     */
    static GatewayProcess start(BenchHome pattern, int boxes) throws InterruptedException, IOException {
        Map<String, String> properties = new LinkedHashMap<>();
        properties.put(MARK, "true");
        properties.put(PATTERN, pattern.folder().toString());
        properties.put(BOXES, String.valueOf(boxes));
        properties.put("spring.main.banner-mode", "off");
        properties.put("server.tomcat.threads.max", "128");
        properties.put("server.tomcat.threads.min-spare", "4");
        properties.put("server.tomcat.max-connections", "1000");
        GatewayProcess process =
                GatewayProcess.start(new Launch(jar(), pattern.folder(), Launch.SMALL, FreePort.any(), properties));
        process.awaitReady(BenchGateway.READY_WITHIN);
        return process;
    }

    private static Path jar() {
        Path jar = Path.of(System.getProperty("java.class.path")).toAbsolutePath();
        if (!jar.toString().endsWith(".jar")) {
            throw new IllegalStateException("the bench must be started from demo.jar: " + jar);
        }
        return jar;
    }

    @Bean
    Map<String, String> keys(Environment environment) {
        Map<String, String> keys = new HashMap<>();
        for (int box = 0; box < environment.getRequiredProperty(BOXES, Integer.class); box++) {
            keys.put(BenchHome.hash(BenchHome.key(box)), BenchSetup.box(box));
        }
        return keys;
    }

    @Bean
    HikariDataSource source(Environment environment) {
        HikariDataSource source = new HikariDataSource();
        source.setJdbcUrl(new BenchHome(Path.of(environment.getRequiredProperty(PATTERN))).url());
        source.setUsername("sa");
        return source;
    }

    @Bean
    PlainWay plainWay(HikariDataSource source) throws SQLException {
        return new PlainWay(source);
    }

    @Bean
    RouterFunction<ServerResponse> routes(Map<String, String> keys, PlainWay plain) {
        return RouterFunctions.route()
                .GET(
                        "/actuator/health/readiness",
                        request -> ServerResponse.ok().build())
                .POST(BARE, request -> answer(request, keys, () -> {}))
                .POST(PLAIN, request -> answer(request, keys, plain::store))
                .build();
    }

    /** How it is stored. */
    private interface Storing {

        void run() throws SQLException;
    }

    private static ServerResponse answer(ServerRequest request, Map<String, String> keys, Storing storing)
            throws IOException, SQLException {
        String key = request.headers().firstHeader("Authorization");
        String box = key == null ? null : keys.get(BenchHome.hash(key.substring("Bearer ".length())));
        if (box == null) {
            return ServerResponse.status(401).build();
        }
        byte[] body = request.servletRequest().getInputStream().readNBytes(1_048_577);
        PlainEvent event = JsonMapper.shared().readValue(body, PlainEvent.class);
        if (!event.right()) {
            return ServerResponse.unprocessableContent().build();
        }
        storing.run();
        return ServerResponse.accepted().body(event.receipt());
    }
}
