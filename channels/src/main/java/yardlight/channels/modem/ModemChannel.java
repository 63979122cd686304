package yardlight.channels.modem;

import java.time.InstantSource;
import java.util.Optional;
import yardlight.channels.Attempt;
import yardlight.channels.Channel;
import yardlight.channels.Health;
import yardlight.channels.Inbox;
import yardlight.channels.Message;
import yardlight.channels.Receiver;
import yardlight.channels.phone.PhoneNumbers;

/**
 * The channel {@code modem}: texts to phone numbers such as {@code +15755550101} through a modem with a SIM card on a serial
 * port of this machine, and what comes back.
 *
 * <p>A text that does not fit into one message goes in several, at most ten; what is longer is cut. One text goes after the
 * other, a few seconds each. A send blocks for at most {@link ModemSettings.Timeouts#whole()}, one {@link
 * ModemSettings.Timeouts#network()} and six {@link ModemSettings.Timeouts#answer()}. The port is opened at the first send,
 * knock, or when somebody listens, and again whenever it was lost.
 *
 * <p>An accepted text has a reference, and its {@linkplain yardlight.channels.Receipt receipt} comes to the inbox where the
 * network sends reports. {@linkplain Outgoing What a text carries} to be told when it is sent again is one octet, which most
 * modems write over: it then arrives twice.
 */
public final class ModemChannel implements Channel, Receiver {

    static final String NAME = "modem";

    private static final String NOT_CONFIGURED = "no modem is set up: messages wait";

    private final Optional<Modem> modem;

    private ModemChannel(Optional<Modem> modem) {
        this.modem = modem;
    }

    /**
     * Without settings every message is deferred.
     *
     * @param clock says when something came in
     */
    public static ModemChannel of(Optional<ModemSettings> settings, InstantSource clock) {
        return new ModemChannel(settings.map(given -> new Modem(given, clock)));
    }

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public Attempt send(Message message) {
        return complaintAbout(message.address())
                .map(Attempt::refused)
                .or(() -> modem.map(one -> one.send(message)))
                .orElseGet(() -> Attempt.deferred(NOT_CONFIGURED));
    }

    @Override
    public Optional<String> knock() {
        return modem.map(Modem::knock).orElse(Optional.of(NOT_CONFIGURED));
    }

    @Override
    public Optional<String> complaintAbout(String address) {
        return PhoneNumbers.complaintAbout(address);
    }

    @Override
    public void listen(Inbox inbox) {
        modem.ifPresent(one -> one.listen(inbox));
    }

    @Override
    public Health health() {
        return modem.map(Modem::health).orElse(new Health(Health.State.NOT_CONFIGURED, NOT_CONFIGURED));
    }

    @Override
    public void close() {
        modem.ifPresent(Modem::close);
    }
}
