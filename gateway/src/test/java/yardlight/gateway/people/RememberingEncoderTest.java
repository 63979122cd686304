package yardlight.gateway.people;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.crypto.password.PasswordEncoder;

class RememberingEncoderTest {

    private final CountDownLatch begun = new CountDownLatch(1);
    private final CountDownLatch end = new CountDownLatch(1);

    /** More are sent than may wait: some are refused while the first check is still under way. */
    @Test
    @Timeout(30)
    void lets_few_wait_and_refuses_the_others_at_once() throws InterruptedException {
        var encoder = new RememberingEncoder(new Endless());
        ExecutorService guessers = Executors.newCachedThreadPool();

        for (int i = 0; i < 4; i++) {
            guessers.submit(() -> encoder.matches("guess", "stored"));
        }
        begun.await();

        assertThatThrownBy(() -> refused(encoder)).isInstanceOf(LockedException.class);

        end.countDown();
        guessers.shutdown();
    }

    private static void refused(RememberingEncoder encoder) {
        encoder.matches("guess", "stored");
    }

    private final class Endless implements PasswordEncoder {

        @Override
        public String encode(CharSequence raw) {
            return raw.toString();
        }

        @Override
        public boolean matches(CharSequence raw, String encoded) {
            begun.countDown();
            try {
                end.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            return false;
        }
    }
}
