package yardlight.gateway.clock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class PulseTest {

    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final AtomicLong nanos = new AtomicLong(-5);
    private final Pulse pulse = new Pulse("lane", nanos::get);

    @Test
    void is_well_while_it_moves() {
        pulse.watch(Thread.currentThread());
        nanos.addAndGet(MINUTE.toNanos());

        assertThat(pulse.trouble(MINUTE)).isEmpty();
    }

    @Test
    void is_in_trouble_when_it_stands_still_for_too_long_and_well_when_it_moves_again() {
        pulse.watch(Thread.currentThread());
        nanos.addAndGet(MINUTE.toNanos() + 1);
        assertThat(pulse.trouble(MINUTE)).hasValue("has not moved for 60 s; restart the gateway");

        pulse.beat();
        assertThat(pulse.trouble(MINUTE)).isEmpty();
    }

    @Test
    void is_in_trouble_when_its_thread_has_ended() throws InterruptedException {
        var thread = new Thread(() -> {});
        thread.start();
        thread.join();
        pulse.watch(thread);

        assertThat(pulse.trouble(MINUTE)).hasValue("has ended; restart the gateway");
    }

    @Test
    void is_well_when_it_was_asked_to_end_and_before_it_begins() {
        assertThat(pulse.trouble(Duration.ZERO)).isEmpty();

        pulse.watch(Thread.currentThread());
        pulse.rest();
        nanos.addAndGet(2 * MINUTE.toNanos());

        assertThat(pulse.trouble(MINUTE)).isEmpty();
    }
}
