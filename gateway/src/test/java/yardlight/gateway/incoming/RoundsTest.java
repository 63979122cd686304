package yardlight.gateway.incoming;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A gateway that stops has other things to finish. */
@Timeout(30)
class RoundsTest {

    private final CountDownLatch begun = new CountDownLatch(1);

    @Test
    void end_without_what_hangs() throws InterruptedException {
        var hangs = new CountDownLatch(1);
        var rounds = new Rounds("hanging", goesOn -> {
            begun.countDown();
            wait(hangs);
        });
        rounds.start();
        begun.await();

        rounds.stop();

        hangs.countDown();
    }

    @Test
    void end_what_would_go_on() throws InterruptedException {
        var ended = new CountDownLatch(1);
        var rounds = new Rounds("long", goesOn -> {
            begun.countDown();
            while (goesOn.getAsBoolean()) {
                Thread.onSpinWait();
            }
            ended.countDown();
        });
        rounds.start();
        begun.await();

        rounds.stop();

        assertThat(ended.getCount()).isZero();
    }

    private static void wait(CountDownLatch hangs) {
        try {
            hangs.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
