package yardlight.channels.web;

import java.time.Duration;

/**
 * What one exchange may take.
 *
 * @param connect for the connection, without TLS
 * @param whole for everything together, not counting what the machine's own resolver takes to look up the host
 */
public record Limits(Duration connect, Duration whole) {

    public static final Limits USUAL = new Limits(Duration.ofSeconds(5), Duration.ofSeconds(30));

    public Limits {
        check("connect-timeout", connect);
        check("timeout", whole);
    }

    private static void check(String what, Duration length) {
        if (length.compareTo(Duration.ofMillis(1)) < 0 || length.compareTo(Duration.ofMinutes(10)) > 0) {
            throw new IllegalArgumentException(what + " must be from 1 ms to 10 minutes: " + length);
        }
    }
}
