package yardlight.db.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;

/**
 * A box that falls silent asks for boxes that share its site, its link or its feed, and many may fall silent in the same
 * sweep. So what is asked for in one query may be thousands, and its time must grow with their number, not with its square.
 */
class ManyBoxesIT {

    private static final int FEW = 500;
    private static final int MANY = 8_000;

    /** Sixteen times as many cost sixteen times as much, with room for noise; compared each with each it would be 256 times. */
    private static final int MOST = 64;

    @ParameterizedTest
    @EnumSource(TestDatabase.class)
    void are_read_in_time_that_grows_with_their_number(TestDatabase database) throws SQLException {
        try (var source = database.migrated(database.newUrl())) {
            new JdbcTemplate(source)
                    .update(
                            "insert into box_watch (box, heard_at, silent, feeds) select 'box-' || n, current_timestamp, false, ''"
                                    + " from " + database.numbers(MANY));
            try (Connection connection = source.getConnection()) {
                var reads = new Reads(new Pen(connection, Optional.empty()));
                List<String> ids =
                        IntStream.rangeClosed(1, MANY).mapToObj(i -> "box-" + i).toList();
                assertThat(reads.boxes(ids)).hasSize(MANY);
                long few = quickest(reads, ids.subList(0, FEW));
                long many = quickest(reads, ids);
                System.out.printf(
                        "%,d boxes at once, %s: %.2f ms, %,d: %.2f ms, ratio %.1f, limit %d%n",
                        FEW, database, few / 1e6, MANY, many / 1e6, (double) many / few, MOST);
                assertThat(many).isLessThan(few * MOST);
            }
        }
    }

    private static long quickest(Reads reads, List<String> ids) {
        return IntStream.range(0, 15)
                .mapToLong(i -> {
                    long began = System.nanoTime();
                    assertThat(reads.boxes(ids)).hasSameSizeAs(ids);
                    return System.nanoTime() - began;
                })
                .min()
                .orElseThrow();
    }
}
