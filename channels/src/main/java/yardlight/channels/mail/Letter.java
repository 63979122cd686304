package yardlight.channels.mail;

import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import yardlight.channels.Message;

/** A mail whose Message-ID is made of the notice's id, so that a carrier that gets it twice can tell. */
final class Letter extends MimeMessage {

    private static final DateTimeFormatter DATE =
            DateTimeFormatter.ofPattern("EEE, d MMM uuuu HH:mm:ss Z", Locale.ENGLISH);

    private final String messageId;

    private Letter(Session session, String messageId) {
        super(session);
        this.messageId = messageId;
    }

    /** With all fields that the two forms share. Addresses must have been checked. */
    static Letter start(Session session, String from, Message message) throws MessagingException {
        Letter letter = new Letter(session, messageId(message.id(), from));
        letter.setFrom(new InternetAddress(from, true));
        letter.setRecipient(RecipientType.TO, new InternetAddress(message.address(), true));
        // Not setSentDate: that one writes this machine's zone.
        letter.setHeader("Date", DATE.format(message.at().atOffset(ZoneOffset.UTC)));
        // RFC 3834 5.1: tells other machines not to answer.
        letter.setHeader("Auto-Submitted", "auto-generated");
        return letter;
    }

    /** Plain text; encoded only when it is not ASCII or has a line over the limit. Seven bits on the wire either way. */
    void body(String text, int longestLine) throws MessagingException {
        boolean ascii = Words.isAscii(text);
        boolean plain = ascii && Words.longestLine(text) <= longestLine;
        setText(text, ascii ? "us-ascii" : "UTF-8");
        setHeader("Content-Transfer-Encoding", plain ? "7bit" : "quoted-printable");
    }

    Letter finish() throws MessagingException {
        saveChanges();
        return this;
    }

    /** Jakarta Mail would make a new one at each {@link #saveChanges()}. */
    @Override
    protected void updateMessageID() throws MessagingException {
        setHeader("Message-ID", messageId);
    }

    /** RFC 5322 3.6.4: the left side is a dot-atom. URL encoding leaves only characters that may stand in one, and dots. */
    private static String messageId(String id, String from) {
        String left = URLEncoder.encode(id, StandardCharsets.UTF_8).replace(".", "%2E");
        return "<" + left + "@" + MailAddress.domainOf(from) + ">";
    }
}
