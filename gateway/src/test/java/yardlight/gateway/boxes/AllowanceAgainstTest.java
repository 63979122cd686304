package yardlight.gateway.boxes;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bucket4j.TimeMeter;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.gateway.posting.Allowance;
import yardlight.gateway.problem.Problem;

/** The allowance against the rule of the token bucket, and its waits against RFC 9110. */
class AllowanceAgainstTest {

    /** A clock that is put to a time. */
    private static final class Stopwatch implements TimeMeter {

        private long nanos;

        void set(Duration since) {
            nanos = since.toNanos();
        }

        @Override
        public long currentTimeNanos() {
            return nanos;
        }

        @Override
        public boolean isWallClockBased() {
            return false;
        }
    }

    private final Stopwatch time = new Stopwatch();
    private final Allowance allowance = new Allowance(3, Duration.ofSeconds(10), time);

    /** Plain bucket, 1 token for 10 s, size 3, cost 1, full at the start: derived from the rule, recomputed. */
    @Test
    void takes_and_refuses_the_thirteen_arrivals_of_the_trace() {
        var taken = new StringBuilder();
        List<Long> waits = new ArrayList<>();

        for (int second : new int[] {0, 0, 1, 2, 5, 10, 10, 12, 30, 60, 60, 60, 60}) {
            time.set(Duration.ofSeconds(second));
            boolean one = allowance.take("mesa-9-box", 1);
            taken.append(one ? 'A' : 'R');
            if (!one) {
                waits.add(allowance.untilNext("mesa-9-box").toSeconds());
            }
        }

        assertThat(taken).hasToString("AAARRARRAAAAR");
        assertThat(waits).containsExactly(8L, 5L, 10L, 8L, 10L);
    }

    /** RFC 9110 10.2.3 knows whole seconds only; rounded up, 0.2 s is 1 and never 0: derived. */
    @ParameterizedTest
    @CsvSource({"9800, 1", "9001, 1", "9000, 1", "8999, 2", "200, 10", "0, 10"})
    void says_to_come_back_in_whole_seconds_rounded_up(int millis, String seconds) {
        time.set(Duration.ZERO);
        allowance.take("mesa-9-box", 3);
        time.set(Duration.ofMillis(millis));

        Problem refusal = allowance.refusal("mesa-9-box");

        assertThat(refusal.headers()).containsEntry("Retry-After", seconds);
    }

    @Test
    void is_each_box_own() {
        time.set(Duration.ZERO);
        allowance.take("mesa-9-box", 3);

        assertThat(allowance.take("mesa-9-box", 1)).isFalse();
        assertThat(allowance.take("dry-fork-box", 1)).isTrue();
    }
}
