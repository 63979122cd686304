package yardlight.gateway.dispatch;

import java.time.Duration;
import java.util.List;

/** How long a notice waits after it was put off: soon at first, then every minute for as long as it is wanted. */
final class Backoff {

    private static final List<Duration> FIRST =
            List.of(Duration.ofSeconds(5), Duration.ofSeconds(15), Duration.ofSeconds(30));
    private static final Duration THEN = Duration.ofMinutes(1);

    private Backoff() {}

    /**
     * @param deferrals how often it was put off before this time
     */
    static Duration after(int deferrals) {
        return deferrals < FIRST.size() ? FIRST.get(deferrals) : THEN;
    }
}
