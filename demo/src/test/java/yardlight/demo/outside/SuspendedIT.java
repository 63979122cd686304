package yardlight.demo.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The packaged gateway is made to stand still as a whole ({@code SIGSTOP}) for longer than a rung waits, and goes on
 * ({@code SIGCONT}). What a clock does that leaps is looked at in the gateway's own ClockStepsIT.
 */
@EnabledOnOs(OS.LINUX)
class SuspendedIT {

    private static final int PLACES = 5;
    private static final Duration WAIT = Duration.ofSeconds(5);
    private static final Duration PATIENCE = Duration.ofSeconds(90);
    private static final String EVENT =
            "{\"id\":\"first\",\"point\":\"tank\",\"condition\":\"high\",\"state\":\"active\"}";

    @TempDir
    private Path home;

    private final Inbox inbox = Inbox.quick();
    private Node node;

    @AfterEach
    void stop() {
        node.close();
        inbox.close();
    }

    @Test
    void every_call_goes_on_when_the_process_goes_on_and_nobody_is_told_twice() throws Exception {
        node = new Node(home, Store.H2.anew(), inbox);
        node.start();
        node.awaitReady();
        node.owner().putSetup(new Places(PLACES, WAIT).document());
        String late = node.owner().newKey(Places.box(0));
        for (int place = 1; place < PLACES; place++) {
            assertThat(Http.event(node.port(), node.owner().newKey(Places.box(place)), EVENT))
                    .isEqualTo(202);
        }
        await().atMost(PATIENCE).until(() -> texts() >= PLACES - 1);

        node.freeze();
        CompletableFuture<Integer> posted = CompletableFuture.supplyAsync(() -> post(late));
        nothingFor(WAIT.plusSeconds(3));
        node.thaw();

        assertThat(posted.join()).as("the answer to what was posted meanwhile").isEqualTo(202);
        await().atMost(PATIENCE).until(() -> texts() >= 2 * PLACES);
        nothingFor(Duration.ofSeconds(2));
        for (int place = 0; place < PLACES; place++) {
            assertThat(inbox.texts(Places.first(place))).as(Places.site(place)).isEqualTo(1);
            assertThat(inbox.texts(Places.second(place))).as(Places.site(place)).isEqualTo(1);
        }
    }

    /** Nothing is waited for but that it stays as it is. */
    private void nothingFor(Duration time) {
        int before = texts();
        await().during(time).atMost(time.plusSeconds(10)).until(() -> texts() == before);
    }

    private int texts() {
        return IntStream.range(0, PLACES)
                .map(place -> inbox.texts(Places.first(place)) + inbox.texts(Places.second(place)))
                .sum();
    }

    private int post(String key) {
        try {
            return Http.event(node.port(), key, EVENT);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
