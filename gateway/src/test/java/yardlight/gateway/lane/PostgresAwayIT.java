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
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.dao.DataAccessException;
import yardlight.channels.FakeChannel;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.heartbeat.Heartbeat;
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

    /** Ten minutes, as the gateway's clock has it; the box may be silent for three. */
    @Test
    void takes_no_box_for_silent_that_could_not_be_heard_in_the_meantime() throws IOException {
        var now = new AtomicReference<>(Instant.now().truncatedTo(ChronoUnit.SECONDS));
        EmbeddedPostgres server = server(0);
        int port = server.getPort();
        var place = new SmallGateway.Place(
                TestDatabase.POSTGRESQL, server.getJdbcUrl("postgres", "postgres"), 1, Optional.of(now::get));
        try (var gateway = new SmallGateway(place, Fixtures.theSetup(), List.of(), "lane", "due")) {
            gateway.lane().heartbeat(BOX, Heartbeat.BARE);

            server.close();
            assertThatThrownBy(() -> gateway.lane().decide(new Stimulus.CalloutDue("none")))
                    .isInstanceOf(LaneBusy.class);
            await().atMost(Duration.ofSeconds(60)).until(() -> failed(gateway) > 0);
            Instant back = now.updateAndGet(before -> before.plus(Duration.ofMinutes(10)));
            server = server(port);

            await().atMost(Duration.ofSeconds(60))
                    .until(() -> deadlines(gateway).equals(List.of(back.plusSeconds(180))));
            assertThat(alarms(gateway)).isZero();

            now.updateAndGet(before -> before.plusSeconds(181));
            await().atMost(Duration.ofSeconds(30)).until(() -> alarms(gateway) == 1);
        } finally {
            server.close();
        }
    }

    private static List<Instant> deadlines(SmallGateway gateway) {
        try {
            return gateway.jdbc()
                    .query(
                            "select due_at from due where kind = 'box'",
                            (row, number) -> row.getTimestamp(1).toInstant());
        } catch (DataAccessException away) {
            return List.of();
        }
    }

    private static double failed(SmallGateway gateway) {
        return gateway.meters().get("yardlight.lane.failed").counter().count();
    }

    private static long alarms(SmallGateway gateway) {
        return gateway.jdbc().queryForObject("select count(*) from alarm", Long.class);
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
