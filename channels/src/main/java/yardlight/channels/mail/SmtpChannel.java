package yardlight.channels.mail;

import jakarta.mail.MessagingException;
import java.time.Duration;
import java.util.Optional;
import yardlight.channels.Attempt;
import yardlight.channels.Channel;
import yardlight.channels.Health;
import yardlight.channels.Message;

/**
 * E-mail, and texts by e-mail. A message goes to one address, over a connection that is kept open for the next one.
 *
 * <p>A send blocks for at most {@link MailSettings.Timeouts#whole()}, not counting what the machine's own resolver takes
 * to look up the host.
 */
public final class SmtpChannel implements Channel {

    private static final String NOT_CONFIGURED = "no mail server is set up: messages wait";

    private final Form form;
    private final Optional<Office> office;
    private final Optional<Connections> connections;
    private volatile Optional<String> trouble = Optional.empty();

    SmtpChannel(Form form, Optional<MailSettings> settings, Duration idleFor) {
        this.form = form;
        this.office = settings.map(Office::new);
        this.connections = office.map(o -> new Connections(o, idleFor));
    }

    /** The channel {@code mail}: a short mail with a subject. Without settings every message is deferred. */
    public static SmtpChannel mail(Optional<MailSettings> settings) {
        return new SmtpChannel(Form.LETTER, settings, Connections.IDLE);
    }

    /** The channel {@code sms-mail}: nothing but the text, to an address at a carrier's domain. */
    public static SmtpChannel smsMail(Optional<MailSettings> settings) {
        return new SmtpChannel(Form.TEXT, settings, Connections.IDLE);
    }

    @Override
    public String name() {
        return form.channel();
    }

    @Override
    public Attempt send(Message message) {
        Optional<String> complaint = complaintAbout(message.address());
        if (complaint.isPresent()) {
            return Attempt.refused(complaint.get());
        }
        if (office.isEmpty()) {
            return Attempt.deferred(NOT_CONFIGURED);
        }
        try {
            Office to = office.get();
            Connections.Exchange exchange = connections
                    .get()
                    .send(form.write(to.session(), to.settings().from(), message));
            remember(exchange);
            return exchange.attempt();
        } catch (MessagingException e) {
            return Attempt.refused("it cannot be written as a mail: " + e.getMessage());
        }
    }

    @Override
    public Optional<String> complaintAbout(String address) {
        return MailAddress.complaintAbout(address);
    }

    @Override
    public Health health() {
        if (office.isEmpty()) {
            return new Health(Health.State.NOT_CONFIGURED, NOT_CONFIGURED);
        }
        String server = office.get().settings().server();
        return trouble.map(why -> new Health(Health.State.TROUBLED, "mail waits, " + server + ": " + why))
                .orElseGet(() -> new Health(Health.State.READY, "mail goes out through " + server));
    }

    @Override
    public void close() {
        connections.ifPresent(Connections::close);
    }

    /** Once a server has listened to the name of a line, whatever it says is no trouble of the channel. */
    private void remember(Connections.Exchange exchange) {
        trouble = exchange.stage().concernsLine()
                ? Optional.empty()
                : Optional.of(exchange.attempt().detail());
    }
}
