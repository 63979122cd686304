package yardlight.gateway.lane;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.gateway.SmallGateway;

/**
 * Promise 1 against a power cut on H2, on any machine: at the moment of each answer the disk loses all that was not forced
 * out of the caches, and what is left is opened. It leans on CHECKPOINT SYNC, which by H2's documentation (Commands) forces
 * all system buffers to be written to the underlying device, and on WRITE_DELAY 0, without which a commit may wait.
 */
class PowerCutIT {

    @TempDir
    private Path folder;

    private SmallGateway gateway;

    @BeforeEach
    void start() {
        PowerCut.register();
        String url = "jdbc:h2:" + PowerCut.SCHEME + ":" + file("yardlight") + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE";
        gateway = new SmallGateway(TestDatabase.H2, url, Fixtures.theSetup(), List.of(), "lane");
    }

    @AfterEach
    void stop() {
        gateway.close();
    }

    @Test
    void every_event_that_was_answered_is_on_the_disk_when_the_power_goes_at_once() throws Exception {
        var answered = new ArrayList<String>();
        for (int i = 0; i < 10; i++) {
            String id = "e-" + i;
            var key = new AlarmKey("mesa-9", "point-" + i % 3, "high");
            gateway.lane().events("mesa-9-box", List.of(Saying.named(id, Saying.active(key))), false);
            answered.add(id);

            Files.copy(PowerCut.left(file("yardlight.mv.db")), file("cut-" + i + ".mv.db"));
            assertThat(events("cut-" + i)).containsAll(answered);
        }
    }

    private Path file(String name) {
        return folder.resolve(name).toAbsolutePath();
    }

    private List<String> events(String database) {
        try (var source = TestDatabase.H2.migrated("jdbc:h2:file:" + file(database))) {
            return new JdbcTemplate(source).queryForList("select substring(box_event, 12) from event", String.class);
        }
    }
}
