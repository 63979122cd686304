package yardlight.gateway.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

/** One at a time, and the next one waits a while. */
class TurnTest {

    @Test
    void who_comes_meanwhile_gets_their_turn_when_it_is_free() {
        var turn = new Turn(Duration.ofSeconds(30));
        var begun = new CountDownLatch(1);
        CompletableFuture<Optional<String>> first = CompletableFuture.supplyAsync(() -> turn.take(() -> {
            begun.countDown();
            return "first";
        }));
        await(begun);

        assertThat(turn.take(() -> "second")).contains("second");
        assertThat(first.join()).contains("first");
    }

    @Test
    void nobody_waits_for_ever() {
        var turn = new Turn(Duration.ofMillis(1));

        assertThat(turn.take(() -> turn.take(() -> "within"))).contains(Optional.empty());
        assertThat(turn.take(() -> "after")).contains("after");
    }

    @Test
    void a_turn_ends_with_a_failure_too() {
        var turn = new Turn(Duration.ofMillis(1));

        assertThatThrownBy(() -> turn.take(() -> {
                    throw new IllegalStateException("broken");
                }))
                .hasMessage("broken");
        assertThat(turn.take(() -> "next")).contains("next");
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
