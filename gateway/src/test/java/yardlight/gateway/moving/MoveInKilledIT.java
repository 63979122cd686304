package yardlight.gateway.moving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import tools.jackson.databind.JsonNode;
import yardlight.db.TestDatabase;
import yardlight.db.moving.LongLog;
import yardlight.db.moving.MoveOut;
import yardlight.gateway.JarGateway;
import yardlight.gateway.Web;

/** Killed while it moves in, a gateway has nothing in its database, and the next start begins again. */
class MoveInKilledIT {

    private static final int ROUNDS = Integer.getInteger("yardlight.moving.kills", 3);
    private static final int LINES = 150_000;

    /** Less than it takes. */
    private static final int MOST_MILLIS = 2_500;

    @TempDir
    static Path folder;

    @BeforeAll
    static void pack() throws Exception {
        String url = TestDatabase.H2.newUrl();
        try (var source = TestDatabase.H2.migrated(url)) {
            LongLog.write(source, LINES);
        }
        new MoveOut(new DriverManagerDataSource(url, TestDatabase.H2.user(), ""))
                .to(folder.resolve("crate.zip"), Instant.now());
    }

    @ParameterizedTest
    @EnumSource
    void the_next_start_begins_again_and_ends_it(TestDatabase database) {
        Stand stand = Stand.on(database, folder.resolve("home-" + database));
        String from = Stand.from(folder.resolve("crate.zip"));
        var random = new Random(4);
        int early = 0;
        for (int round = 0; round < ROUNDS; round++) {
            JarGateway killed = stand.begin(from);
            await().atMost(Duration.ofSeconds(60))
                    .until(() -> killed.said().contains("is being moved in")
                            || killed.said().contains("moved in at an earlier start"));
            await().pollDelay(Duration.ofMillis(random.nextInt(MOST_MILLIS))).until(() -> true);
            killed.kill();
            early += killed.said().contains("moved here by") ? 0 : 1;
        }
        System.out.println(database + ": killed before it was in, " + early + " of " + ROUNDS);
        assertThat(early).isPositive();

        try (JarGateway gateway = stand.ready(from)) {
            assertThat(gateway.said()).containsAnyOf("moved here by crate.zip", "moved in at an earlier start");
            JsonNode head = Web.json(gateway.web().get("/api/v1/log/head", Web.owner()));
            assertThat(head.get("size").asLong()).isGreaterThan(LINES);
        }
    }
}
