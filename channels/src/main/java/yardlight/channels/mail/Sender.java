package yardlight.channels.mail;

import jakarta.mail.Session;
import java.util.Optional;
import yardlight.channels.Message;

/**
 * Who writes our mails.
 *
 * @param names there only if answers and reports are heard
 */
record Sender(Session session, String from, Optional<MailNames> names) {

    /** The same message to the same address always has the same one. */
    String name(Form form, Message message) {
        String domain = MailAddress.domainOf(from);
        return names.map(made -> made.of(form, message.id(), message.address(), domain))
                .orElseGet(() -> "<" + MailNames.left(message.id()) + "@" + domain + ">");
    }
}
