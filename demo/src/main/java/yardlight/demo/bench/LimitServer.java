package yardlight.demo.bench;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.core.env.Environment;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configuration.EnableWebSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import yardlight.demo.gateway.FreePort;
import yardlight.demo.gateway.GatewayProcess;
import yardlight.demo.gateway.Launch;

/**
 * What the gateway is held against, on the stack that the gateway stands on, with its threads and its options: an endpoint
 * behind a filter that looks up the box's key, which reads the event, checks it and answers 202 with nothing stored; and the
 * plain way to store it. In a process of its own, so that neither shares a heap or a compiler with anything else.
 */
@EnableAutoConfiguration
@EnableWebSecurity
@Import(LimitController.class)
class LimitServer {

    static final String MARK = "demo.bench.limits";
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
     * @param jvm options of the virtual machine, those of the gateway
     */
    static GatewayProcess start(BenchHome pattern, int boxes, List<String> jvm)
            throws InterruptedException, IOException {
        Map<String, String> properties = new LinkedHashMap<>();
        properties.put(MARK, "true");
        properties.put(PATTERN, pattern.folder().toString());
        properties.put(BOXES, String.valueOf(boxes));
        properties.put("spring.main.banner-mode", "off");
        properties.put("server.tomcat.threads.max", "128");
        properties.put("server.tomcat.threads.min-spare", "4");
        properties.put("server.tomcat.max-connections", "1000");
        GatewayProcess process =
                GatewayProcess.start(new Launch(jar(), pattern.folder(), jvm, FreePort.any(), properties));
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
    SecurityFilterChain chain(HttpSecurity http, Environment environment) {
        Map<String, String> keys = new HashMap<>();
        for (int box = 0; box < environment.getRequiredProperty(BOXES, Integer.class); box++) {
            keys.put(BenchHome.hash(BenchHome.key(box)), BenchSetup.box(box));
        }
        return http.authorizeHttpRequests(requests -> requests.requestMatchers(LimitController.READY)
                        .permitAll()
                        .anyRequest()
                        .hasRole(LimitFilter.ROLE))
                .addFilterBefore(new LimitFilter(keys), AuthorizationFilter.class)
                .csrf(AbstractHttpConfigurer::disable)
                .logout(AbstractHttpConfigurer::disable)
                .requestCache(AbstractHttpConfigurer::disable)
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .build();
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
}
