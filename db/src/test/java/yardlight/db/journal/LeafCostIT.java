package yardlight.db.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.db.TestDatabase;

/**
 * What it costs that each line of the log is a leaf of the tree, with its row, in the transaction that makes it. The same
 * new alarms go into two databases in turn, batch by batch: with the tree, and with the same lines without any hash. What
 * the lane does besides (reading, checking and answering posts) is left out, so its own share is smaller than this one.
 * {@code -Dyardlight.leaf.batches=600} measures for longer.
 */
class LeafCostIT {

    private static final int BATCHES = Integer.getInteger("yardlight.leaf.batches", 150);
    private static final double MOST_SHARE = 0.15;

    @ParameterizedTest
    @EnumSource(TestDatabase.class)
    void takes_at_most_a_seventh_of_the_writers_events(TestDatabase database) {
        try (var with = new AlarmBatches(database.newDataSource(), true, 2 * BATCHES);
                var without = new AlarmBatches(database.newDataSource(), false, 2 * BATCHES)) {
            for (int i = 0; i < BATCHES; i++) {
                with.write();
                without.write();
            }
            long[] hashed = new long[BATCHES];
            long[] plain = new long[BATCHES];
            for (int i = 0; i < BATCHES; i++) {
                // Whoever comes second finds the processor warm, so they take turns in that too.
                if (i % 2 == 0) {
                    hashed[i] = with.write();
                    plain[i] = without.write();
                } else {
                    plain[i] = without.write();
                    hashed[i] = with.write();
                }
            }
            assertThat(with.lines()).isEqualTo(without.lines()).isGreaterThan(with.events());
            assertThat(with.leaves()).isEqualTo(with.lines());
            assertThat(without.leaves()).isZero();
            double share = 1 - (double) median(plain) / median(hashed);
            System.out.printf(
                    "a leaf for each line, %s: %,.0f new alarms a second with, %,.0f without (%.1f lines each),"
                            + " share %.3f, limit %.2f, ratio %.2f%n",
                    database,
                    perSecond(hashed),
                    perSecond(plain),
                    (double) with.lines() / with.events(),
                    share,
                    MOST_SHARE,
                    share / MOST_SHARE);
            assertThat(share).isLessThan(MOST_SHARE);
        }
    }

    private static double perSecond(long[] nanos) {
        return AlarmBatches.SIZE * 1e9 / median(nanos);
    }

    private static long median(long[] nanos) {
        long[] sorted = nanos.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
