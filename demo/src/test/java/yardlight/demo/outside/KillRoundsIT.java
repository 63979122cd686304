package yardlight.demo.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Promises 1 to 3 by force, from outside: the packaged gateway is killed with {@code kill -9} at random moments under
 * eight posting clients. {@code -Dyardlight.kill.rounds=200} asks for more rounds on each database, {@code
 * -Dyardlight.kill.seed} for other moments.
 *
 * <p>What it leans on, as documented. H2 (h2database.com, Commands, SET WRITE_DELAY): with 0 a commit is written at once
 * and not after a delay. PostgreSQL (manual, 28.3 Write-Ahead Logging and 19.5.1 synchronous_commit): a commit that was
 * answered is in the log, and its server is another process, which the kill does not reach. A kill loses no page of the
 * operating system; what a power cut asks for on top is held by {@link SyncedIT}.
 */
class KillRoundsIT {

    private static final int ROUNDS = Integer.getInteger("yardlight.kill.rounds", 5);
    private static final long SEED = Long.getLong("yardlight.kill.seed", 1);
    private static final int IN_A_BLOCK = 10;

    @ParameterizedTest
    @EnumSource
    void what_was_answered_is_there_and_told_however_often_the_gateway_is_killed(Store store) throws Exception {
        var tally = new Tally();

        for (int done = 0; done < ROUNDS; done += IN_A_BLOCK) {
            new Block(Math.min(IN_A_BLOCK, ROUNDS - done), SEED + done).run(store, tally);
            System.out.println(store + ", seed " + SEED + ": " + tally);
        }

        assertThat(tally.broken).as("seed " + SEED).isEmpty();
        assertThat(tally.alarms()).isGreaterThan(ROUNDS);
        assertThat(tally.answered()).isGreaterThan(10L * ROUNDS);
    }

    @Test
    void the_database_server_of_these_rounds_syncs_as_one_in_earnest() throws Exception {
        assertThat(Store.ask("select name || ' ' || setting from pg_settings"
                        + " where name in ('fsync', 'full_page_writes', 'synchronous_commit') order by name"))
                .isEqualTo(List.of("fsync on", "full_page_writes on", "synchronous_commit on"));
    }
}
