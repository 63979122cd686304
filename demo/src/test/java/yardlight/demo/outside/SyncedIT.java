package yardlight.demo.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.util.FileSystemUtils;
import yardlight.demo.outside.Trace.Call;

/**
 * Promise 1 as the kernel sees it: after the last write of an event to the database, and before a box gets its 202, stands
 * a call that came back from the disk.
 *
 * <p>What it leans on, as documented. H2 (Commands, CHECKPOINT SYNC): flushes the data to disk and forces all system
 * buffers to be written to the underlying device. PostgreSQL 18 (manual, 19.5.1, {@code fsync} and {@code
 * synchronous_commit}; 28.3, Write-Ahead Logging): with both on, a commit is answered when its record in the log has been
 * flushed to disk, and what the log has is redone after a crash. Both are only as good as the disk's own flush.
 */
class SyncedIT {

    private static final String EVENT =
            "{\"id\":\"%s\",\"point\":\"tank\",\"condition\":\"high\",\"state\":\"active\",\"priority\":\"high\"}";
    private static final int EVENTS = 5;

    @BeforeAll
    static void strace_is_there() throws Exception {
        String missing = Trace.missing();
        if (!missing.isEmpty()) {
            System.out.println("SKIPPED: what reaches the disk before a 202 is not looked at: " + missing);
        }
        assumeTrue(missing.isEmpty(), missing);
    }

    @ParameterizedTest
    @EnumSource
    void between_the_request_and_its_202_the_disk_has_answered(Store store) throws Exception {
        Path home = Files.createTempDirectory(Path.of("target").toAbsolutePath(), "yardlight-synced-");
        Map<String, String> database = store.anew();
        try (Inbox inbox = Inbox.quick();
                Node node = new Node(home, database, inbox)) {
            node.start();
            node.awaitReady();
            node.owner().putSetup(new Places(1, Duration.ofMinutes(15)).document());
            String key = node.owner().newKey(Places.box(0));
            assertThat(Http.event(node.port(), key, EVENT.formatted("before"))).isEqualTo(202);
            // Once it is told nothing else is going on: a sync that is seen belongs to the event.
            await().atMost(Duration.ofSeconds(20))
                    .until(() -> Seen.all(node.port()).values().stream().allMatch(Seen::told));

            List<Call> calls = traced(store, node, key);

            List<Call> answers = calls.stream().filter(SyncedIT::answers).toList();
            assertThat(answers).hasSize(EVENTS);
            for (Call answer : answers) {
                synced(store, calls, answer);
            }
        } finally {
            FileSystemUtils.deleteRecursively(home);
        }
    }

    private static List<Call> traced(Store store, Node node, String key) throws Exception {
        var processes = new ArrayList<>(List.of(node.pid()));
        if (store == Store.POSTGRESQL) {
            Store.ask("select pid from pg_stat_activity where backend_type = 'client backend'"
                            + " and pid <> pg_backend_pid()")
                    .forEach(pid -> processes.add(Long.valueOf(pid)));
        }
        try (Trace trace = Trace.of(processes)) {
            for (int i = 0; i < EVENTS; i++) {
                assertThat(Http.event(node.port(), key, EVENT.formatted("traced-" + i)))
                        .isEqualTo(202);
            }
            return trace.calls();
        }
    }

    private static void synced(Store store, List<Call> calls, Call answer) {
        int asked = calls.stream()
                .filter(call -> call.name().equals("read") && call.what().contains("\"POST /api/v1/events"))
                .mapToInt(Call::end)
                .filter(line -> line < answer.begin())
                .max()
                .orElseThrow();
        List<Call> between = calls.stream()
                .filter(call -> call.begin() > asked && call.end() < answer.begin())
                .toList();
        int written = between.stream()
                .filter(call -> call.writes() && call.what().contains(file(store)))
                .mapToInt(Call::end)
                .min()
                .orElseThrow(() -> new AssertionError("nothing was written before " + answer));
        assertThat(between)
                .as("syncs of " + store + " that began after it had written and were back before " + answer)
                .anyMatch(call -> call.syncs() && call.what().contains(file(store)) && call.begin() > written);
    }

    private static boolean answers(Call call) {
        return call.name().equals("write") && call.what().contains("\"HTTP/1.1 202");
    }

    /** The file of H2, or the directory of PostgreSQL's log. */
    private static String file(Store store) {
        return store == Store.H2 ? "/yardlight.mv.db>" : "/pg_wal/";
    }
}
