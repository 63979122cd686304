package yardlight.gateway.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;
import static yardlight.gateway.lane.Saying.active;
import static yardlight.gateway.lane.Saying.named;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.slf4j.LoggerFactory;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.gateway.SmallGateway;

/** H2 closes itself at the first write that fails. Nothing may be answered from its memory then. */
@ExtendWith(OutputCaptureExtension.class)
class DiskFullIT {

    private static final String BOX = "mesa-9-box";

    @AfterEach
    void make_room() {
        FullDisk.fill(false);
        log(null);
    }

    private static void log(Level level) {
        ((Logger) LoggerFactory.getLogger(LaneThread.class.getPackageName())).setLevel(level);
    }

    @Test
    void nothing_is_taken_while_the_disk_is_full_nothing_answered_is_lost_and_it_goes_on_by_itself() {
        String url = TestDatabase.H2.newUrl();
        var answered = new ArrayList<String>();
        try (var gateway = new SmallGateway(
                new SmallGateway.Place(TestDatabase.H2, FullDisk.holding(url), 1),
                Fixtures.theSetup(),
                List.of(),
                "lane")) {
            for (int i = 0; i < 50; i++) {
                answered.add(post(gateway, "before-" + i));
            }
            FullDisk.fill(true);
            for (int i = 0; i < 5; i++) {
                String refused = "full-" + i;
                assertThatThrownBy(() -> post(gateway, refused)).isInstanceOf(LaneBusy.class);
            }

            FullDisk.fill(false);
            await().atMost(Duration.ofSeconds(30))
                    .ignoreExceptionsInstanceOf(LaneBusy.class)
                    .until(() -> {
                        answered.add(post(gateway, "after"));
                        return true;
                    });
        }

        try (var source = TestDatabase.H2.migrated(url)) {
            assertThat(new JdbcTemplate(source)
                            .queryForList("select substring(box_event, 12) from event", String.class))
                    .containsAll(answered)
                    .doesNotHaveDuplicates();
        }
    }

    /** What can be read all the time; the box may be silent for three minutes. */
    @Test
    void no_box_is_silent_whose_signs_of_life_found_no_room(CapturedOutput output) {
        log(Level.INFO);
        var now = new AtomicReference<>(Instant.now().truncatedTo(ChronoUnit.SECONDS));
        var place = new SmallGateway.Place(
                TestDatabase.H2, FullDisk.holding(TestDatabase.H2.newUrl()), 1, Optional.of(now::get));
        try (var gateway = new SmallGateway(place, Fixtures.theSetup(), List.of(), "lane", "due")) {
            gateway.lane().heartbeat(BOX, Heartbeat.BARE);
            FullDisk.fill(true);
            assertThatThrownBy(() -> gateway.lane().heartbeat(BOX, Heartbeat.BARE))
                    .isInstanceOf(LaneBusy.class);
            Instant back = now.updateAndGet(before -> before.plusSeconds(600));
            double failed = failed(gateway);
            await().atMost(Duration.ofSeconds(60)).until(() -> failed(gateway) > failed + 1);
            assertThat(output).doesNotContain("the database answers again");

            FullDisk.fill(false);

            await().atMost(Duration.ofSeconds(60))
                    .ignoreExceptionsInstanceOf(DataAccessException.class)
                    .until(() -> deadlines(gateway).equals(List.of(back.plusSeconds(180))));
            assertThat(output).contains("the database answers again", "nothing was stored for a while before " + back);
        }
    }

    private static double failed(SmallGateway gateway) {
        return gateway.meters().get("yardlight.lane.failed").counter().count();
    }

    private static List<Instant> deadlines(SmallGateway gateway) {
        return gateway.jdbc()
                .query(
                        "select due_at from due where kind = 'box'",
                        (row, number) -> row.getTimestamp(1).toInstant());
    }

    /**
     * A pool looks anew at a connection only when it has been idle for half a second: pages and boxes' keys would meet those
     * that died with the database.
     */
    @Test
    void whoever_asks_at_once_afterwards_gets_a_connection_that_lives() throws SQLException {
        String url = TestDatabase.H2.newUrl();
        try (var gateway = new SmallGateway(
                new SmallGateway.Place(TestDatabase.H2, FullDisk.holding(url), 1),
                Fixtures.theSetup(),
                List.of(),
                "lane")) {
            post(gateway, "before");
            askWithAll(gateway);
            FullDisk.fill(true);
            assertThatThrownBy(() -> post(gateway, "full")).isInstanceOf(LaneBusy.class);
            FullDisk.fill(false);

            assertThatCode(() -> askWithAll(gateway)).doesNotThrowAnyException();
        }
    }

    /** With every connection of the pool but the writer's. */
    private static void askWithAll(SmallGateway gateway) throws SQLException {
        try (Connection one = gateway.source().getConnection();
                Connection two = gateway.source().getConnection();
                Connection three = gateway.source().getConnection()) {
            for (Connection connection : List.of(one, two, three)) {
                try (Statement asking = connection.createStatement()) {
                    asking.executeQuery("select count(*) from lane").close();
                }
            }
        }
    }

    private static String post(SmallGateway gateway, String id) {
        gateway.lane().events(BOX, List.of(named(id, active(Fixtures.TANK))), false);
        return id;
    }
}
