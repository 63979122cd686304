package yardlight.db.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.db.columns.Column;
import yardlight.db.figures.Figures.Waiting;

/** What waits, counted on every database. */
class FiguresIT {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");

    @ParameterizedTest
    @EnumSource
    void waiting_notices_are_counted_by_channel_with_the_oldest(TestDatabase database) {
        var jdbc = new JdbcTemplate(database.newDataSource());
        queued(jdbc, "a", "mail", NOW.minusSeconds(9));
        queued(jdbc, "b", "mail", NOW.minusSeconds(5));
        queued(jdbc, "c", "modem", NOW);

        assertThat(new Figures(jdbc).queuedByChannel())
                .isEqualTo(Map.of(
                        "mail",
                        new Waiting(2, Optional.of(NOW.minusSeconds(9))),
                        "modem",
                        new Waiting(1, Optional.of(NOW))));
    }

    private static void queued(JdbcTemplate jdbc, String id, String channel, Instant at) {
        jdbc.update(
                "insert into notice (id, contact, callouts, priority, words, state, queued_at, line)"
                        + " values (?, 'ana', '', 'high', '', 'queued', ?, 0)",
                id,
                Column.stored(at));
        jdbc.update(
                "insert into outbox (notice, channel, ready_at, queued_at, deferrals, doubts) values (?, ?, ?, ?, 0,"
                        + " 0)",
                id,
                channel,
                Column.stored(at),
                Column.stored(at));
    }
}
