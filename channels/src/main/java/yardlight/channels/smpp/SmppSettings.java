package yardlight.channels.smpp;

import java.time.Duration;
import java.util.Optional;

/**
 * Which message centre takes our texts, and how we speak to it.
 *
 * @param host name or IP address
 * @param port 1 to 65535; 2775 is usual, 3550 with TLS
 * @param tls from the first byte, with a certificate in the host's name from an authority that this machine trusts; else the
 *     password and every text go in the clear
 * @param from the sender: a number as {@code +15755550100}, a short code of 3 to 8 digits, or 1 to 11 letters, digits and
 *     spaces. Empty: the centre puts in the account's own
 * @param window how many texts may be on their way to the centre without its answer, 1 to 100
 */
public record SmppSettings(
        String host, int port, boolean tls, Login login, Optional<String> from, int window, Timeouts timeouts) {

    /** Common practice, no source: what providers allow when they say nothing. */
    public static final int USUAL_WINDOW = 10;

    public SmppSettings {
        if (host.isBlank() || host.chars().anyMatch(c -> c <= ' ' || c > '~')) {
            throw new IllegalArgumentException("SMPP host must be a name or an IP address: " + host);
        }
        if (port < 1 || port > 65_535) {
            throw new IllegalArgumentException("SMPP port must be 1 to 65535: " + port);
        }
        if (window < 1 || window > 100) {
            throw new IllegalArgumentException("SMPP window must be 1 to 100: " + window);
        }
        from.ifPresent(SmppAddress::from);
    }

    /** {@code smsc.example:2775}. */
    String server() {
        return host + ":" + port;
    }

    /**
     * Who we are to the centre: sections 5.2.1 to 5.2.3. Its text form keeps the password back.
     *
     * @param systemId 1 to 15 printable ASCII characters
     * @param password 0 to 8
     * @param systemType 0 to 12; empty unless the provider says otherwise
     */
    public record Login(String systemId, String password, String systemType) {

        public Login {
            check("system-id", systemId, 1, 15);
            check("system-type", systemType, 0, 12);
            if (!fits(password, 0, 8)) {
                throw new IllegalArgumentException(
                        "SMPP password must be at most 8 printable ASCII characters (section 5.2.2)");
            }
        }

        private static void check(String what, String text, int least, int most) {
            if (!fits(text, least, most)) {
                throw new IllegalArgumentException(
                        "SMPP " + what + " must be " + least + " to " + most + " printable ASCII characters: " + text);
            }
        }

        private static boolean fits(String text, int least, int most) {
            return text.length() >= least
                    && text.length() <= most
                    && text.chars().allMatch(c -> c >= ' ' && c <= '~');
        }

        @Override
        public String toString() {
            return "Login[" + systemId + "]";
        }
    }

    /**
     * How long we wait: the timers of section 7.2.
     *
     * @param connect for the connection
     * @param response for the answer to whatever we ask (response_timer)
     * @param whole for everything that one text takes: a place in the window, a session, and all its parts
     * @param quiet how long nothing may come in before the centre is asked whether it is there (enquire_link_timer)
     */
    public record Timeouts(Duration connect, Duration response, Duration whole, Duration quiet) {

        public static final Timeouts USUAL = new Timeouts(
                Duration.ofSeconds(5), Duration.ofSeconds(10), Duration.ofSeconds(60), Duration.ofSeconds(30));

        public Timeouts {
            check("connect", connect);
            check("response", response);
            check("whole", whole);
            check("quiet", quiet);
        }

        private static void check(String what, Duration length) {
            if (length.toMillis() < 1 || length.compareTo(Duration.ofHours(1)) > 0) {
                throw new IllegalArgumentException("SMPP timeout " + what + " must be from 1 ms to 1 hour: " + length);
            }
        }
    }
}
