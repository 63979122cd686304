package yardlight.gateway.lane;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;

/**
 * Promise 1 of the design, as far as it can be tried here: what was answered survives the death of the process. What
 * makes it survive a power cut is a sync before the answer, see docs/decisions/h2.md.
 */
class KilledIT {

    @RepeatedTest(3)
    void every_event_and_every_reading_that_was_answered_is_there_after_the_process_was_killed(RepetitionInfo round)
            throws Exception {
        String url = TestDatabase.H2.newUrl();

        Set<String> answered = killed(url, new Random(round.getCurrentRepetition()));

        assertThat(of("e-", answered)).isNotEmpty();
        assertThat(of("r-", answered)).isNotEmpty();
        try (var source = TestDatabase.H2.migrated(url)) {
            var jdbc = new JdbcTemplate(source);
            assertThat(new HashSet<>(jdbc.queryForList("select substring(box_event, 12) from event", String.class)))
                    .containsAll(of("e-", answered));
            assertThat(new HashSet<>(jdbc.queryForList("select cast(measured as integer) from reading", Integer.class)))
                    .containsAll(of("r-", answered).stream()
                            .map(name -> Integer.valueOf(name.substring(2)))
                            .toList());
            assertThat(jdbc.queryForObject("select max(line) - count(*) from log_line", Long.class))
                    .as("gaps in the log")
                    .isZero();
            assertThat(jdbc.queryForObject(
                            "select count(*) from callout c where live_site > '' and not exists"
                                    + " (select 1 from due d where d.kind = 'callout' and d.subject = c.id)",
                            Long.class))
                    .as("callouts that nobody would go on with")
                    .isZero();
        }
    }

    /** Runs a gateway and kills it while it is busy. Comes back with what it had answered. */
    private static Set<String> killed(String url, Random random) throws Exception {
        Process victim = new ProcessBuilder(java(), "-cp", System.getProperty("java.class.path"), victim(), url)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (BufferedReader out = victim.inputReader()) {
            var answered = new ArrayList<String>(List.of(firstEvent(out)));
            // By its handle: Process.destroyForcibly would also close the stream that is being read here.
            CompletableFuture.delayedExecutor(200 + random.nextInt(800), TimeUnit.MILLISECONDS)
                    .execute(victim.toHandle()::destroyForcibly);
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                answered.add(line);
            }
            assertThat(victim.waitFor(Duration.ofSeconds(10).toMillis(), TimeUnit.MILLISECONDS))
                    .isTrue();
            // The last line may have been cut off in the middle of its number.
            return new HashSet<>(answered.subList(0, answered.size() - 1));
        } finally {
            victim.destroyForcibly();
        }
    }

    private static List<String> of(String kind, Set<String> answered) {
        return answered.stream().filter(name -> name.startsWith(kind)).toList();
    }

    private static String firstEvent(BufferedReader out) throws IOException {
        String line = out.readLine();
        while (line != null && !line.startsWith("e-")) {
            line = out.readLine();
        }
        assertThat(line).as("the gateway started").isNotNull();
        return line;
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    private static String victim() {
        return Victim.class.getName();
    }
}
