package yardlight.channels.mail;

import jakarta.mail.AuthenticationFailedException;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import java.util.Optional;
import org.eclipse.angus.mail.smtp.SMTPTransport;
import yardlight.channels.oauth.NoToken;

/**
 * Jakarta Mail's SMTP conversation, which also remembers how far it came and what the server answered there.
 *
 * <p>Its exceptions alone do not tell: after a refusal it sends RSET, and when the server has hung up by then the refusal
 * is lost; and no answer to DATA looks like no answer to the end of the text. Not thread-safe: one message at a time.
 */
final class Dialogue extends SMTPTransport {

    private final MailSettings settings;
    private Stage stage = Stage.GREETING;
    private Optional<Reply> reply = Optional.empty();
    private boolean listening = true;

    Dialogue(Session session, MailSettings settings) {
        super(session, null);
        this.settings = settings;
    }

    /** A new message on a conversation that is open: what was said for the last one is forgotten. */
    void begin() {
        enter(Stage.SENDER);
    }

    Stage stage() {
        return stage;
    }

    /** What was answered at this stage; empty if nothing that can be read. */
    Optional<Reply> reply() {
        return reply;
    }

    @Override
    protected boolean protocolConnect(String host, int port, String user, String password) throws MessagingException {
        if (settings.login().isEmpty()) {
            return super.protocolConnect(settings.host(), settings.port(), null, null);
        }
        MailSettings.Login login = settings.login().get();
        String secret = secret(login);
        try {
            return super.protocolConnect(settings.host(), settings.port(), login.username(), secret);
        } catch (AuthenticationFailedException e) {
            login.tokens().ifPresent(tokens -> tokens.refused(secret));
            throw e;
        }
    }

    private static String secret(MailSettings.Login login) throws MessagingException {
        try {
            return login.secret();
        } catch (NoToken e) {
            throw new MessagingException("no token", e);
        }
    }

    @Override
    protected void sendCommand(String command) throws MessagingException {
        Optional<Stage> asked = Stage.askedBy(command);
        listening = asked.isPresent();
        if (asked.isPresent() && asked.get() != Stage.SENT) {
            enter(asked.get());
        }
        super.sendCommand(command);
        // Only now: had writing failed the final dot would not have left, and no server could have taken the message.
        if (asked.isPresent() && asked.get() == Stage.SENT) {
            enter(Stage.SENT);
        }
    }

    @Override
    protected int readServerResponse() throws MessagingException {
        int code = super.readServerResponse();
        if (listening && code > 0) {
            reply = Optional.of(new Reply(code, getLastServerResponse()));
        }
        return code;
    }

    private void enter(Stage next) {
        if (stage != next) {
            reply = Optional.empty();
        }
        stage = next;
    }
}
