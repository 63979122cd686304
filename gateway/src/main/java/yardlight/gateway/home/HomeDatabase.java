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
 * Puts an H2 file into {@code yardlight.home} unless {@code spring.datasource.url} names another database, and gives
 * PostgreSQL's driver what makes its batches fast. The home may begin with {@code ~/} or be relative.
 */
final class HomeDatabase implements EnvironmentPostProcessor, Ordered {

    private static final String HOME = "yardlight.home";
    private static final String URL = "spring.datasource.url";

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
