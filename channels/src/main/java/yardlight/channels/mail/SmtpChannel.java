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

    /** The name of the channel of mails to people. */
    public static final String MAIL = Form.LETTER.channel();

    /** The name of the channel of texts by mail. */
    public static final String SMS_MAIL = Form.TEXT.channel();

    private static final String NOT_CONFIGURED = "no mail server is set up: messages wait";

    private final Form form;
    private final Optional<Connections> connections;
    private final Optional<MailNames> names;

    SmtpChannel(Form form, Optional<MailSettings> settings, Optional<MailNames> names, Duration idleFor) {
        this.form = form;
        this.names = names;
        this.connections = settings.map(given -> new Connections(new Office(given, names.isPresent()), idleFor));
    }

    /** The channel {@code mail}: a short mail with a subject. Without settings every message is deferred. */
    public static SmtpChannel mail(Optional<MailSettings> settings) {
        return mail(settings, Optional.empty());
    }

    /** @param names there if answers and reports are heard: what is accepted then has its Message-ID as its reference */
    public static SmtpChannel mail(Optional<MailSettings> settings, Optional<MailNames> names) {
        return new SmtpChannel(Form.LETTER, settings, names, Connections.IDLE);
    }

    /** The channel {@code sms-mail}: nothing but the text, to an address at a carrier's domain. */
    public static SmtpChannel smsMail(Optional<MailSettings> settings) {
        return smsMail(settings, Optional.empty());
    }

    /** @param names as with {@link #mail(Optional, Optional)} */
    public static SmtpChannel smsMail(Optional<MailSettings> settings, Optional<MailNames> names) {
        return new SmtpChannel(Form.TEXT, settings, names, Connections.IDLE);
    }

    @Override
    public String name() {
        return form.channel();
    }

    @Override
    public Attempt send(Message message) {
        return complaintAbout(message.address())
                .map(Attempt::refused)
                .or(() -> connections.map(open -> send(message, open)))
                .orElseGet(() -> Attempt.deferred(NOT_CONFIGURED));
    }

    @Override
    public Optional<String> knock() {
        return connections.map(Connections::knock).orElse(Optional.of(NOT_CONFIGURED));
    }

    private Attempt send(Message message, Connections open) {
        Office office = open.office();
        try {
            Letter letter =
                    form.write(new Sender(office.session(), office.settings().from(), names), message);
            Attempt attempt = open.send(letter);
            return attempt.outcome() == Attempt.Outcome.ACCEPTED && names.isPresent()
                    ? Attempt.accepted(attempt.detail(), letter.messageId())
                    : attempt;
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
        return connections.map(this::health).orElse(new Health(Health.State.NOT_CONFIGURED, NOT_CONFIGURED));
    }

    private Health health(Connections open) {
        String server = open.office().settings().server();
        return open.trouble()
                .map(why -> new Health(Health.State.TROUBLED, "mail waits, " + server + ": " + why))
                .orElseGet(() -> new Health(Health.State.READY, "mail goes out through " + server));
    }

    @Override
    public void close() {
        connections.ifPresent(Connections::close);
    }
}
