package yardlight.gateway.modem;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import yardlight.channels.modem.ModemSettings;
import yardlight.channels.modem.ModemSettings.Sim;
import yardlight.channels.modem.ModemSettings.Timeouts;

/**
 * The modem. Its text form keeps the PIN back.
 *
 * @param port such as {@code /dev/ttyUSB2}, or a link under {@code /dev/serial/by-id}
 * @param speed bits a second; a modem on USB does not care
 * @param pin of the SIM card; none if it asks for none
 * @param number our own, for senders that the network names without a country's code
 * @param serviceCentre none, and the card's own is taken
 * @param validity how long the network goes on trying a phone that is off
 * @param answerTimeout for the modem's answer to whatever needs nobody else
 * @param networkTimeout for the network's answer to a text
 * @param poll how often the modem is looked after without a reason
 */
@ConfigurationProperties("yardlight.modem")
record PortSettings(
        String port,
        @DefaultValue("115200") int speed,
        Optional<String> pin,
        Optional<String> number,
        Optional<String> serviceCentre,
        @DefaultValue("6h") Duration validity,
        @DefaultValue("5s") Duration answerTimeout,
        @DefaultValue("60s") Duration networkTimeout,
        @DefaultValue("20s") Duration poll) {

    /** Remembers in the gateway's home that a PIN was not taken. */
    private static final String TRIED = "modem-pin-tried";

    /** Without a port there is no modem. An {@link IllegalArgumentException} for what cannot work. */
    Optional<ModemSettings> settings(Path home) {
        if (port == null || port.isBlank()) {
            return Optional.empty();
        }
        var timeouts = new Timeouts(answerTimeout, networkTimeout, Timeouts.USUAL.whole(), poll);
        var sim = new Sim(given(pin), given(serviceCentre), Optional.of(home.resolve(TRIED)));
        return Optional.of(new ModemSettings(port.strip(), speed, sim, given(number), validity, timeouts));
    }

    private static Optional<String> given(Optional<String> text) {
        return text.map(String::strip).filter(words -> !words.isEmpty());
    }

    @Override
    public String toString() {
        return "PortSettings[" + port + "]";
    }
}
