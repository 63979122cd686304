package yardlight.channels.smpp;

import java.time.InstantSource;
import java.util.Optional;
import java.util.function.Supplier;
import javax.net.ssl.SSLSocketFactory;
import yardlight.channels.Attempt;
import yardlight.channels.Channel;
import yardlight.channels.Health;
import yardlight.channels.Inbox;
import yardlight.channels.Message;
import yardlight.channels.Receiver;
import yardlight.channels.phone.PhoneNumbers;

/**
 * The channel {@code smpp}: texts to phone numbers such as {@code +15755550101} through a message centre, over one session
 * that is kept open, and what comes back over it.
 *
 * <p>A text that does not fit into one message goes in several, at most ten; what is longer is cut. A send blocks for at most
 * {@link SmppSettings.Timeouts#whole()} and one {@link SmppSettings.Timeouts#response()}. The session is opened at the first
 * send, knock, or when somebody listens.
 *
 * <p>An accepted text has a reference if the centre names it, and its {@linkplain yardlight.channels.Receipt receipt} comes
 * to the inbox, possibly before {@link #send} comes back. {@linkplain Submission What a text carries} to be told when it is
 * sent again is no more than 16 bits.
 */
public final class SmppChannel implements Channel, Receiver {

    static final String NAME = "smpp";

    private static final String NOT_CONFIGURED = "no SMPP message centre is set up: messages wait";

    private final Optional<Centre> centre;

    private SmppChannel(Optional<Centre> centre) {
        this.centre = centre;
    }

    /**
     * Without settings every message is deferred.
     *
     * @param clock says when something came in
     */
    public static SmppChannel of(Optional<SmppSettings> settings, InstantSource clock) {
        // Not before it is needed: reading what the machine trusts takes time.
        return of(settings, clock, () -> (SSLSocketFactory) SSLSocketFactory.getDefault());
    }

    static SmppChannel of(Optional<SmppSettings> settings, InstantSource clock, Supplier<SSLSocketFactory> tls) {
        return new SmppChannel(settings.map(given -> new Centre(given, clock, tls)));
    }

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public Attempt send(Message message) {
        return complaintAbout(message.address())
                .map(Attempt::refused)
                .or(() -> centre.map(open -> open.send(message)))
                .orElseGet(() -> Attempt.deferred(NOT_CONFIGURED));
    }

    @Override
    public Optional<String> knock() {
        return centre.map(Centre::knock).orElse(Optional.of(NOT_CONFIGURED));
    }

    @Override
    public Optional<String> complaintAbout(String address) {
        return PhoneNumbers.complaintAbout(address);
    }

    @Override
    public void listen(Inbox inbox) {
        centre.ifPresent(open -> open.listen(inbox));
    }

    @Override
    public Health health() {
        return centre.map(SmppChannel::health).orElse(new Health(Health.State.NOT_CONFIGURED, NOT_CONFIGURED));
    }

    private static Health health(Centre open) {
        return open.trouble()
                .map(why -> new Health(Health.State.TROUBLED, "texts wait: " + why))
                .orElseGet(() -> new Health(Health.State.READY, "texts go out through " + open.server()));
    }

    @Override
    public void close() {
        centre.ifPresent(Centre::close);
    }
}
