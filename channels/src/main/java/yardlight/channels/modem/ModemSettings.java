package yardlight.channels.modem;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import yardlight.channels.gsm.Submit;
import yardlight.channels.phone.PhoneNumbers;

/**
 * Which modem takes our texts, and how we speak to it. Its text form keeps the PIN back.
 *
 * @param port such as {@code /dev/ttyUSB2}, {@code COM3}, or a link to one
 * @param speed bits a second; a modem on USB does not care
 * @param sim what the SIM card needs to be told
 * @param number our own, as {@code +15755550100}: senders without a country's code are then of the same country. Empty: of
 *     the service centre's
 * @param validity how long the network goes on trying to reach a phone that is off, 5 minutes to 63 weeks
 */
public record ModemSettings(
        String port, int speed, Sim sim, Optional<String> number, Duration validity, Timeouts timeouts) {

    /** Common practice, no source. */
    public static final int USUAL_SPEED = 115_200;

    /** Long enough for a night's sleep with the phone off, and short enough that no old alarm surprises anybody. */
    public static final Duration USUAL_VALIDITY = Duration.ofHours(6);

    public ModemSettings {
        if (port.isBlank() || port.chars().anyMatch(c -> c < ' ')) {
            throw new IllegalArgumentException("modem port must be the name of a serial port: " + port);
        }
        if (speed < 300 || speed > 4_000_000) {
            throw new IllegalArgumentException("modem speed must be 300 to 4000000: " + speed);
        }
        if (validity.compareTo(Duration.ofMinutes(5)) < 0 || validity.compareTo(Duration.ofDays(63 * 7)) > 0) {
            throw new IllegalArgumentException("modem validity must be 5 minutes to 63 weeks: " + validity);
        }
        number.ifPresent(given -> requireNumber("number", given));
    }

    private static void requireNumber(String what, String number) {
        if (!PhoneNumbers.isInternational(number)) {
            throw new IllegalArgumentException("modem " + what + " must be a number as +15755550100: " + number);
        }
    }

    int validityPeriod() {
        return Submit.validity(validity);
    }

    /**
     * The SIM card. Its text form keeps the PIN back.
     *
     * @param pin 4 to 8 digits; empty for a card that asks for none
     * @param centre the service centre's number; empty for the one on the card
     * @param tried where it is kept, for good, that a PIN was not taken: three wrong ones lock the card, and a gateway is
     *     started again by itself. Empty: known until the gateway stops
     */
    public record Sim(Optional<String> pin, Optional<String> centre, Optional<Path> tried) {

        public Sim {
            if (pin.filter(given -> !given.matches("[0-9]{4,8}")).isPresent()) {
                throw new IllegalArgumentException("modem PIN must be 4 to 8 digits");
            }
            centre.ifPresent(given -> requireNumber("centre", given));
        }

        @Override
        public String toString() {
            return "Sim[" + (pin.isPresent() ? "with" : "without") + " a PIN]";
        }
    }

    /**
     * How long we wait.
     *
     * @param answer for the modem's answer to a command that needs nobody else
     * @param network for the answer to a text, which comes from the network
     * @param whole for everything that one text takes before its last part is on its way: those before it, the port, the parts
     * @param poll how often the modem is set up again, asked how it hears its network, and looked through for texts
     */
    public record Timeouts(Duration answer, Duration network, Duration whole, Duration poll) {

        public static final Timeouts USUAL = new Timeouts(
                Duration.ofSeconds(5), Duration.ofSeconds(60), Duration.ofSeconds(60), Duration.ofSeconds(20));

        public Timeouts {
            check("answer", answer);
            check("network", network);
            check("whole", whole);
            check("poll", poll);
        }

        private static void check(String what, Duration length) {
            if (length.toMillis() < 1 || length.compareTo(Duration.ofHours(1)) > 0) {
                throw new IllegalArgumentException("modem timeout " + what + " must be from 1 ms to 1 hour: " + length);
            }
        }
    }
}
