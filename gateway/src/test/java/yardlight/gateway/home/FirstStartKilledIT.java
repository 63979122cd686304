package yardlight.gateway.home;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.context.support.GenericApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.mock.env.MockEnvironment;
import yardlight.db.TestDatabase;
import yardlight.gateway.JarGateway;
import yardlight.gateway.Web;

/**
 * A first start that is killed needs no hand. On PostgreSQL each version of the tables is one transaction, and it gives up a
 * dead session's lock; on H2 there is no such transaction, see {@code BrokenOffIT} of the database.
 */
class FirstStartKilledIT {

    private static final int ROUNDS = 8;

    /** As long as it takes on a slow machine. */
    private static final int MOST_MILLIS = 1_500;

    @TempDir
    private Path home;

    @ParameterizedTest
    @EnumSource
    void the_tables_are_made_by_the_next_one_whenever_the_first_was_killed(TestDatabase database) throws Exception {
        var random = new Random(1);
        int unfinished = 0;
        for (int round = 0; round < ROUNDS; round++) {
            String url = database.newUrl();
            unfinished += killed(database, url, random.nextInt(MOST_MILLIS)) ? 1 : 0;

            check(url);
            try (var source = database.migrated(url)) {
                assertThat(new JdbcTemplate(source).queryForList("select id from lane", Integer.class))
                        .containsExactly(1);
            }
        }
        assertThat(unfinished).as("killed before they were done").isPositive();
    }

    @ParameterizedTest
    @EnumSource
    void the_packaged_gateway_is_ready_at_the_next_start(TestDatabase database) {
        String[] more = switch (database) {
            case H2 -> new String[0];
            case POSTGRESQL ->
                new String[] {"--spring.datasource.url=" + database.newUrl(), "--spring.datasource.username=postgres"};
        };
        JarGateway first = JarGateway.begin(home, more);
        await().atMost(Duration.ofSeconds(60))
                .pollDelay(Duration.ZERO)
                .pollInterval(Duration.ofMillis(2))
                .until(() -> first.said().contains("Migrating schema"));
        first.kill();
        assertThat(first.said()).doesNotContain("Successfully applied");

        try (JarGateway second = JarGateway.ready(home, more)) {
            assertThat(second.web().get("/api/v1/setup", Web.owner()).statusCode())
                    .isEqualTo(404);
        }
    }

    /** Whether it was not done by then. */
    private static boolean killed(TestDatabase database, String url, int millis) throws Exception {
        Process first = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        FirstStart.class.getName(),
                        database.name(),
                        url)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (BufferedReader out = first.inputReader()) {
            untilItBegins(out);
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(millis));
        } finally {
            first.destroyForcibly();
        }
        return first.waitFor() != 0;
    }

    private static void untilItBegins(BufferedReader out) throws IOException {
        String line = out.readLine();
        while (line != null && !line.equals(FirstStart.BEGINS)) {
            line = out.readLine();
        }
        assertThat(line).as("it began").isNotNull();
    }

    private static void check(String url) {
        var context = new GenericApplicationContext();
        context.setEnvironment(new MockEnvironment().withProperty("spring.datasource.url", url));
        new HomeCheck().initialize(context);
    }
}
