package yardlight.gateway.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;
import static yardlight.gateway.lane.Saying.active;
import static yardlight.gateway.lane.Saying.named;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.gateway.SmallGateway;

/** What a failed sync was to write may be gone from the machine's memory too: only the file itself can be believed. */
class SyncFailsIT {

    private static final String BOX = "mesa-9-box";

    @AfterEach
    void listen_again() {
        FullDisk.deafen(false);
    }

    @Test
    void nothing_is_answered_then_and_the_file_is_read_anew_before_the_next_answer() {
        String url = TestDatabase.H2.newUrl();
        try (var gateway =
                new SmallGateway(TestDatabase.H2, FullDisk.holding(url), Fixtures.theSetup(), List.of(), "lane")) {
            assertThat(takes(gateway, "before")).isTrue();

            FullDisk.deafen(true);
            assertThatThrownBy(() -> post(gateway, "deaf")).isInstanceOf(LaneBusy.class);
            int before = FullDisk.opened();
            FullDisk.deafen(false);

            await().atMost(Duration.ofSeconds(15)).until(() -> takes(gateway, "after"));
            assertThat(FullDisk.opened()).isGreaterThan(before);
        }

        try (var source = TestDatabase.H2.migrated(url)) {
            assertThat(new JdbcTemplate(source)
                            .queryForList("select substring(box_event, 12) from event", String.class))
                    .contains("before", "after")
                    .doesNotHaveDuplicates();
        }
    }

    private static boolean takes(SmallGateway gateway, String id) {
        try {
            post(gateway, id);
            return true;
        } catch (LaneBusy busy) {
            return false;
        }
    }

    private static void post(SmallGateway gateway, String id) {
        gateway.lane().events(BOX, List.of(named(id, active(Fixtures.TANK))), false);
    }
}
