package yardlight.db.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.db.tree.CanonicalLine;
import yardlight.db.tree.Frontier;
import yardlight.db.tree.Hashing;
import yardlight.db.tree.PlainTree;

/**
 * How long the proof of one line takes in a long log. The lines are written past the journal, with the same tree;
 * {@code -Dyardlight.log.lines=10000000} makes it as long as ten million.
 */
class LongLogIT {

    private static final int LINES = Integer.getInteger("yardlight.log.lines", 100_000);
    private static final int PROOFS = 400;
    private static final int AT_ONCE = 10_000;
    private static final long MOST_NANOS = 50_000_000;
    private static final Instant NOW = WrittenLog.NOW;
    private static final String LINE = "insert into log_line (line, logged_at, what, site, contact, about, words, leaf)"
            + " values (?, ?, 'notice', 'mesa-9', null, ?, 'handed over; by mail', ?)";

    private final Hashing hashing = new Hashing();
    private final Frontier frontier = new Frontier();

    @ParameterizedTest
    @EnumSource(TestDatabase.class)
    void proves_any_of_its_lines_in_less_than_fifty_milliseconds(TestDatabase database) throws SQLException {
        try (var source = database.migrated(database.newUrl())) {
            var jdbc = new JdbcTemplate(source);
            try (Connection connection = source.getConnection()) {
                write(connection);
            }
            var tree = new LogTree(jdbc);
            LogHead head = tree.head();
            assertThat(head.size()).isEqualTo(LINES);
            var random = new Random(LINES);
            long[] nanos = new long[PROOFS];
            for (int i = 0; i < PROOFS; i++) {
                long line = 1 + random.nextInt(LINES);
                long began = System.nanoTime();
                LogTree.Proof proof = tree.proof(line, tree.head(), LINES).orElseThrow();
                nanos[i] = System.nanoTime() - began;
                assertThat(proof.leaf()).isEqualTo(hashing.leaf(proof.entry().getBytes(StandardCharsets.UTF_8)));
                assertThat(PlainTree.included(proof.leaf(), line - 1, LINES, proof.path(), head.root()))
                        .isTrue();
            }
            Arrays.sort(nanos);
            double median = nanos[PROOFS / 2] / 1e6;
            double most = nanos[PROOFS * 99 / 100] / 1e6;
            System.out.printf(
                    "proof of a line of %,d, %s: p50 %.2f ms, p99 %.2f ms, limit 50 ms, ratio %.3f%n",
                    LINES, database, median, most, most / 50);
            assertThat(nanos[PROOFS / 2]).isLessThan(MOST_NANOS);
        }
    }

    private void write(Connection connection) throws SQLException {
        connection.setAutoCommit(false);
        try (PreparedStatement lines = connection.prepareStatement(LINE);
                PreparedStatement tiles =
                        connection.prepareStatement("insert into log_tile (level, place, hash) values (?, ?, ?)")) {
            for (int line = 1; line <= LINES; line++) {
                byte[] leaf = leaf(line);
                lines.setLong(1, line);
                lines.setTimestamp(2, Timestamp.from(NOW.plusMillis(line)));
                lines.setString(3, "notice n-" + line);
                lines.setBytes(4, leaf);
                lines.addBatch();
                frontier.add(leaf, (level, place, hash) -> tile(tiles, level, place, hash));
                if (line % AT_ONCE == 0 || line == LINES) {
                    lines.executeBatch();
                    tiles.executeBatch();
                    connection.commit();
                }
            }
        }
        try (PreparedStatement lane = connection.prepareStatement(
                "update lane set log_first = 1, log_size = ?, log_edge = ?, last_line = ? where id = 1")) {
            lane.setLong(1, LINES);
            lane.setBytes(2, frontier.bytes());
            lane.setLong(3, LINES);
            assertThat(lane.executeUpdate()).isOne();
        }
        connection.commit();
        connection.setAutoCommit(true);
    }

    private byte[] leaf(int line) {
        return hashing.leaf(CanonicalLine.of(
                line, NOW.plusMillis(line), "notice", Map.of("notice", "n-" + line), "handed over; by mail"));
    }

    private static void tile(PreparedStatement tiles, int level, long place, byte[] hash) {
        try {
            tiles.setInt(1, level);
            tiles.setLong(2, place);
            tiles.setBytes(3, hash);
            tiles.addBatch();
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }
}
