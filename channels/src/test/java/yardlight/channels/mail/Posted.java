package yardlight.channels.mail;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import yardlight.channels.Attempt;
import yardlight.channels.Message;

/** What a message looks like on the wire: sends it to a server on bare sockets and gives back what came. */
final class Posted {

    private Posted() {}

    static String by(Form form, Message... messages) throws IOException {
        return by(form, Optional.empty(), messages);
    }

    static String by(Form form, Optional<MailNames> names, Message... messages) throws IOException {
        try (ScriptedServer server = new ScriptedServer();
                SmtpChannel channel =
                        new SmtpChannel(form, Optional.of(Settings.plain(server.port())), names, Connections.IDLE)) {
            for (Message message : messages) {
                Attempt attempt = channel.send(message);
                if (attempt.outcome() != Attempt.Outcome.ACCEPTED) {
                    throw new AssertionError(attempt);
                }
            }
            List<ScriptedServer.Mail> mails = server.mails;
            return mails.get(mails.size() - 1).text();
        }
    }
}
