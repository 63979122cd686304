package yardlight.channels.modem;

import java.time.Duration;
import java.util.Optional;
import yardlight.channels.modem.ModemSettings.Sim;
import yardlight.channels.modem.ModemSettings.Timeouts;

/** Settings for the stand-in. */
final class Modems {

    static final Timeouts PATIENT = new Timeouts(
            Duration.ofSeconds(20), Duration.ofSeconds(30), Duration.ofSeconds(60), Duration.ofMinutes(10));

    static final Timeouts SHORT =
            new Timeouts(Duration.ofMillis(800), Duration.ofMillis(800), Duration.ofSeconds(5), Duration.ofMinutes(10));

    private static final Sim OPEN = new Sim(Optional.empty(), Optional.empty(), Optional.empty());

    private Modems() {}

    static ModemSettings at(String port) {
        return at(port, OPEN, PATIENT);
    }

    static ModemSettings at(String port, Timeouts timeouts) {
        return at(port, OPEN, timeouts);
    }

    static ModemSettings at(String port, Sim sim, Timeouts timeouts) {
        return new ModemSettings(
                port,
                ModemSettings.USUAL_SPEED,
                sim,
                Optional.of("+15755550100"),
                ModemSettings.USUAL_VALIDITY,
                timeouts);
    }
}
