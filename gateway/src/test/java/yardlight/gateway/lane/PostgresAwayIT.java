package yardlight.gateway.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;
import static yardlight.gateway.lane.Saying.active;
import static yardlight.gateway.lane.Saying.named;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardlight.channels.FakeChannel;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.gateway.SmallGateway;

/** The server itself is stopped and started again under a gateway that goes on. */
class PostgresAwayIT {

    private static final String BOX = "mesa-9-box";

    @TempDir
    private Path data;

    @Test
    void refuses_while_the_server_is_stopped_and_goes_on_by_itself_when_it_is_back() throws IOException {
        FakeChannel texts = FakeChannel.named("sms-mail");
        EmbeddedPostgres server = server(0);
        int port = server.getPort();
        try (var gateway = new SmallGateway(
                TestDatabase.POSTGRESQL,
                server.getJdbcUrl("postgres", "postgres"),
                Fixtures.theSetup(),
                List.of(texts, FakeChannel.named("mail")),
                "lane",
                "due",
                "dispatch")) {
            gateway.lane().events(BOX, List.of(named("e-1", active(Fixtures.TANK))), false);
            await().until(() -> texts.taken().size() == 1);

            server.close();
            assertThatThrownBy(() -> gateway.lane().events(BOX, List.of(named("e-2", active(Fixtures.PUMP))), false))
                    .isInstanceOf(LaneBusy.class);
            server = server(port);
            await().atMost(Duration.ofSeconds(60)).until(() -> takes(gateway.lane()));

            await().atMost(Duration.ofSeconds(30)).until(() -> texts.taken().size() == 2);
            assertThat(gateway.jdbc().queryForObject("select count(*) from alarm", Long.class))
                    .isEqualTo(2);
        } finally {
            server.close();
        }
    }

    private static boolean takes(Lane lane) {
        try {
            lane.events(BOX, List.of(named("e-2", active(Fixtures.PUMP))), false);
            return true;
        } catch (LaneBusy busy) {
            return false;
        }
    }

    private EmbeddedPostgres server(int port) throws IOException {
        return EmbeddedPostgres.builder()
                .setPort(port)
                .setDataDirectory(data.resolve("data"))
                .setCleanDataDirectory(false)
                .start();
    }
}
