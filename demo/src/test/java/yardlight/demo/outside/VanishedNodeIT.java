package yardlight.demo.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two packaged gateways on one PostgreSQL, one of which vanishes in the middle of a transaction without a word: nothing
 * closes its connections, so the server goes on holding the lock that every writer needs. What frees it is the server's
 * idle_in_transaction_session_timeout (PostgreSQL's manual, 19.11.1 Statement Behavior). Frozen by SIGSTOP it is as good
 * as gone, but for its kernel, which still says that packets have come; that the server hears nothing at all while it
 * sends (tcp_user_timeout, 19.3.2) takes a network of its own to try.
 */
class VanishedNodeIT {

    private static final int PLACES = 40;
    private static final Duration PATIENCE = Duration.ofSeconds(90);

    /** The server's ten seconds, and what the other one takes to ask again. */
    private static final long PROMISED_SECONDS = 15;

    private static final String IN_THE_MIDDLE =
            "select state from pg_stat_activity where application_name = 'vanishes' and state = 'idle in transaction'"
                    + " and query not ilike '%qrtz%'";

    @TempDir
    private Path homes;

    private final Inbox inbox = Inbox.quick();
    private Node vanishes;
    private Node stays;
    private Fleet fleet;
    private String asking;

    @BeforeEach
    void prepare() throws Exception {
        Map<String, String> store = Store.POSTGRESQL.anew();
        var named = new HashMap<>(store);
        named.merge("spring.datasource.url", "&ApplicationName=vanishes", String::concat);
        stays = new Node(homes.resolve("stays"), store, inbox);
        vanishes = new Node(homes.resolve("vanishes"), named, inbox);
        stays.start();
        stays.awaitReady();
        stays.owner().putSetup(new Places(PLACES + 1, Duration.ofMinutes(15)).document());
        vanishes.start();
        vanishes.awaitReady();
        List<String> keys = IntStream.range(0, PLACES)
                .mapToObj(Places::box)
                .map(stays.owner()::newKey)
                .toList();
        asking = stays.owner().newKey(Places.box(PLACES));
        fleet = new Fleet(List.of(vanishes.port(), stays.port()), keys, 1);
    }

    @AfterEach
    void stop() {
        fleet.end();
        vanishes.close();
        stays.close();
        inbox.close();
    }

    @Test
    void the_lock_that_it_holds_keeps_the_other_no_longer_than_promised() throws Exception {
        fleet.allow(PLACES / 2);
        await().atMost(PATIENCE).until(() -> fleet.begun() == PLACES / 2 && told(PLACES / 2));

        freezeInTheMiddle();
        long frozen = System.nanoTime();
        fleet.killed();
        fleet.allow(PLACES / 2);
        assertThat(Store.ask(IN_THE_MIDDLE))
                .as("transactions it is in the middle of")
                .isNotEmpty();

        untilAnswered();
        long seconds = TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - frozen);
        System.out.println("VANISHED: the other one answers again after " + seconds + " s");
        assertThat(seconds).isLessThan(PROMISED_SECONDS);
        assertThat(Store.ask(IN_THE_MIDDLE)).isEmpty();

        await().atMost(Duration.ofSeconds(5)).until(() -> inbox.texts(Places.first(PLACES)) == 1);
        vanishes.thaw();
        await().atMost(PATIENCE).until(() -> fleet.begun() == PLACES && told(PLACES));
        fleet.awaitAnswers();
        counted();
    }

    /** Tries until it stands still between two statements of a transaction, not only between two transactions. */
    private void freezeInTheMiddle() throws Exception {
        for (int tries = 0; tries < 200; tries++) {
            vanishes.freeze();
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(100));
            if (!Store.ask(IN_THE_MIDDLE).isEmpty()) {
                return;
            }
            vanishes.thaw();
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(20 + tries % 7));
        }
        throw new IllegalStateException("it is never in the middle of a transaction");
    }

    /** A box that goes to the one that stays, and to no other. */
    private void untilAnswered() throws Exception {
        String event = "{\"id\":\"first\",\"point\":\"tank\",\"condition\":\"high\",\"state\":\"active\"}";
        long end = System.nanoTime() + PATIENCE.toNanos();
        int status = Http.event(stays.port(), asking, event);
        for (; status == 503 && System.nanoTime() < end; status = Http.event(stays.port(), asking, event)) {
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(250));
        }
        assertThat(status).isEqualTo(202);
    }

    private boolean told(int places) {
        return IntStream.range(0, places).allMatch(place -> inbox.texts(Places.first(place)) > 0);
    }

    private void counted() throws Exception {
        await().atMost(PATIENCE)
                .until(() -> Seen.all(stays.port()).values().stream().allMatch(Seen::told));
        Map<String, Seen> seen = Seen.all(stays.port());
        assertThat(fleet.wrong()).isEmpty();
        assertThat(seen).hasSize(PLACES + 1);
        for (int place = 0; place < PLACES; place++) {
            assertThat(seen.get(Places.site(place)).events())
                    .as(Places.site(place))
                    .isEqualTo(fleet.answered(place));
            assertThat(inbox.texts(Places.first(place))).as(Places.site(place)).isBetween(1, 2);
        }
    }
}
