package yardlight.channels.smpp;

import java.time.Duration;
import java.util.Optional;
import yardlight.channels.smpp.SmppSettings.Login;
import yardlight.channels.smpp.SmppSettings.Timeouts;

/** Settings for message centres of this machine. */
final class Centres {

    static final String FROM = "+15755550100";
    static final String PASSWORD = "secret08";
    static final Login LOGIN = new Login("yardlight", PASSWORD, "");

    /** Long enough for a machine under load where a test does not wait for it to pass. */
    static final Timeouts PATIENT =
            new Timeouts(Duration.ofSeconds(10), Duration.ofSeconds(20), Duration.ofSeconds(30), Duration.ofMinutes(1));

    private Centres() {}

    static SmppSettings at(int port) {
        return at(port, PATIENT);
    }

    static SmppSettings at(int port, Timeouts timeouts) {
        return at(port, 10, timeouts);
    }

    static SmppSettings at(int port, int window, Timeouts timeouts) {
        return new SmppSettings("localhost", port, false, LOGIN, Optional.of(FROM), window, timeouts);
    }
}
