package yardlight.gateway.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import yardlight.gateway.OutOfMemory;

class InTimeTest {

    private final InTime inTime = new InTime(Duration.ofMillis(300));
    private final CountDownLatch never = new CountDownLatch(1);

    @AfterEach
    void let_go() {
        never.countDown();
        inTime.close();
    }

    @Test
    void gives_what_was_made() {
        assertThat(inTime.get(() -> Optional.of("curve"))).contains("curve");
        assertThat(inTime.get(Optional::empty)).isEmpty();
    }

    @Test
    void gives_nothing_when_the_work_goes_wrong_in_whatever_way() {
        assertThat(inTime.get(() -> {
                    throw new IllegalStateException("made up for this test");
                }))
                .isEmpty();
        assertThat(inTime.get(() -> {
                    throw new StackOverflowError("made up for this test");
                }))
                .isEmpty();
        assertThat(inTime.<String>get(() -> {
                    OutOfMemory.now();
                    return Optional.empty();
                }))
                .isEmpty();
    }

    @Test
    void does_not_wait_for_what_takes_too_long_nor_behind_it() {
        long began = System.nanoTime();

        assertThat(inTime.get(() -> {
                    never.await();
                    return Optional.of("too late");
                }))
                .isEmpty();
        assertThat(inTime.get(() -> Optional.of("behind it"))).isEmpty();

        assertThat(Duration.ofNanos(System.nanoTime() - began)).isLessThan(Duration.ofSeconds(5));
    }

    /** H2 closes its file when a thread is interrupted that reads it. */
    @Test
    void never_interrupts_what_it_does_not_wait_for() throws InterruptedException {
        var interrupted = new boolean[1];
        var ended = new CountDownLatch(1);

        inTime.get(() -> {
            try {
                never.await();
            } catch (InterruptedException e) {
                interrupted[0] = true;
            } finally {
                ended.countDown();
            }
            return Optional.empty();
        });
        never.countDown();
        ended.await();

        assertThat(interrupted[0]).isFalse();
    }
}
