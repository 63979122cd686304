package yardlight.gateway.dispatch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import yardlight.gateway.OutOfMemory;

/** Nothing that goes wrong while the dispatcher looks into the outbox ends the looking. */
class DispatcherMistakesIT {

    private final Workbench bench = new Workbench();
    private final Dispatcher dispatcher = new Dispatcher(
            bench.sending,
            new Late(bench.sending, bench.intake, Duration.ofSeconds(30)),
            new DispatchSettings(Duration.ofMillis(20), 2, Duration.ofSeconds(30), Map.of()));

    @AfterEach
    void stop() {
        dispatcher.stop();
    }

    @Test
    void looks_on_after_trouble_with_the_database_and_out_of_memory() {
        bench.outbox.mistakes.add(new IllegalStateException("the database is away"));
        bench.outbox.mistakes.add(OutOfMemory.caught());
        bench.outbox.ready.add(bench.outgoing("n-1", 0));

        dispatcher.start();

        await().until(() -> bench.texts.taken().size() == 1);
        assertThat(bench.outbox.mistakes).isEmpty();
        assertThat(dispatcher.isRunning()).isTrue();
    }
}
