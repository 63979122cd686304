package yardlight.demo.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import yardlight.demo.gateway.ScriptedGateway;

class PacedTest {

    private final ScriptedGateway gateway = new ScriptedGateway();

    @AfterEach
    void close() {
        gateway.close();
    }

    @Test
    void does_each_thing_once_and_none_before_its_time() throws Exception {
        Queue<Integer> done = new ConcurrentLinkedQueue<>();
        Queue<Long> early = new ConcurrentLinkedQueue<>();

        new Paced(gateway.port(), 3, 100).run(20, (http, number, wanted) -> {
            done.add(number);
            if (System.nanoTime() < wanted) {
                early.add(wanted);
            }
        });

        assertThat(done).hasSize(20).doesNotHaveDuplicates().contains(0, 19);
        assertThat(early).isEmpty();
    }

    @Test
    void takes_as_long_as_the_rate_says() throws Exception {
        long begin = System.nanoTime();

        new Paced(gateway.port(), 2, 50).run(11, (http, number, wanted) -> {});

        assertThat(System.nanoTime() - begin).isGreaterThanOrEqualTo(200_000_000);
    }

    @Test
    void one_answer_that_is_not_202_ends_it() {
        assertThatThrownBy(() -> new Paced(gateway.port(), 1, 1_000)
                        .run(3, (http, number, wanted) -> Paced.accepted(number == 1 ? 503 : 202)))
                .isInstanceOf(ExecutionException.class)
                .hasMessageContaining("503");
    }
}
