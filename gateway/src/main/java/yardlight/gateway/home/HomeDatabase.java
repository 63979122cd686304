package yardlight.gateway.home;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.boot.EnvironmentPostProcessor;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.context.config.ConfigDataEnvironmentPostProcessor;
import org.springframework.core.Ordered;
import org.springframework.core.env.ConfigurableEnvironment;
import org.springframework.core.env.MapPropertySource;

/**
 * Puts an H2 file into {@code yardlight.home} unless {@code spring.datasource.url} names another database, and tells
 * PostgreSQL what makes its batches fast and its locks short. The home may begin with {@code ~/} or be relative.
 */
final class HomeDatabase implements EnvironmentPostProcessor, Ordered {

    private static final String HOME = "yardlight.home";
    private static final String URL = "spring.datasource.url";
    private static final String WAIT = "spring.datasource.hikari.data-source-properties.socketTimeout";
    private static final String INIT = "spring.datasource.hikari.connection-init-sql";

    /**
     * The server learns nothing from a machine that vanishes. So it is told when to give up a connection on its own, with
     * every lock that it holds: when a transaction stands still, when what it sends is not received, and when nobody is there. Flyway's own lock
     * is kept out of a transaction, for that one would stand still while tables are made.
     */
    private static final String CUT_OFF =
            "set idle_in_transaction_session_timeout = '10s'; set tcp_user_timeout = '10s'; set tcp_keepalives_idle = 10;"
                    + " set tcp_keepalives_interval = 5; set tcp_keepalives_count = 3";

    /**
     * And the gateway learns nothing from a server that vanishes: whoever waits for its answer would wait for hours. Seconds; longer
     * than any statement takes but those that make tables, and shorter than a thread may stand still before it is taken for dead.
     */
    private static final String LONGEST_WAIT = "45";

    @Override
    public void postProcessEnvironment(ConfigurableEnvironment environment, SpringApplication application) {
        Path home = path(environment.getProperty(HOME, "~/.yardlight"), environment.getProperty("user.home", "."));
        Map<String, Object> found = new LinkedHashMap<>();
        found.put(HOME, home.toString());
        String url = environment.getProperty(URL, "");
        if (url.isBlank()) {
            found.put(URL, url(home));
            found.put("spring.datasource.username", environment.getProperty("spring.datasource.username", "sa"));
        } else if (url.startsWith("jdbc:postgresql:")) {
            found.put("spring.datasource.hikari.data-source-properties.reWriteBatchedInserts", "true");
            found.put(WAIT, environment.getProperty(WAIT, LONGEST_WAIT));
            found.put(INIT, environment.getProperty(INIT, CUT_OFF));
            found.put("spring.flyway.postgresql.transactional-lock", "false");
        }
        environment.getPropertySources().addFirst(new MapPropertySource("yardlight home", found));
    }

    static Path path(String home, String userHome) {
        String expanded = home.equals("~") || home.startsWith("~/") ? userHome + home.substring(1) : home;
        return Path.of(expanded).toAbsolutePath().normalize();
    }

    /** With no delay a commit survives the death of the process; the pool, not H2, closes the file at the end. */
    private static String url(Path home) {
        if (home.toString().contains(";")) {
            throw new IllegalArgumentException(HOME + " must not contain a semicolon: " + home);
        }
        return "jdbc:h2:file:" + home.resolve("yardlight") + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE";
    }

    @Override
    public int getOrder() {
        return ConfigDataEnvironmentPostProcessor.ORDER + 1;
    }
}
