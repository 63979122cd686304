package yardlight.channels.mail;

import jakarta.activation.DataHandler;
import jakarta.mail.MessagingException;
import jakarta.mail.Part;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import jakarta.mail.internet.MimePart;
import jakarta.mail.util.ByteArrayDataSource;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.regex.Pattern;
import yardlight.channels.Attachment;
import yardlight.channels.Message;

/** A mail whose Message-ID is made of the notice's id, so that a carrier that gets it twice can tell. */
final class Letter extends MimeMessage {

    private static final DateTimeFormatter DATE =
            DateTimeFormatter.ofPattern("EEE, d MMM uuuu HH:mm:ss Z", Locale.ENGLISH);

    private static final Pattern MESSAGE_ID = Pattern.compile("<[!-;=?-~]{3,300}>");

    private static final int LONGEST_DESCRIPTION = 200;

    private final String messageId;

    private Letter(Sender sender, String messageId) {
        super(sender.session());
        this.messageId = messageId;
    }

    /** With all fields that the two forms share. Addresses must have been checked. */
    static Letter start(Form form, Sender sender, Message message) throws MessagingException {
        Letter letter = new Letter(sender, sender.name(form, message));
        letter.setFrom(new InternetAddress(sender.from(), true));
        letter.setRecipient(RecipientType.TO, new InternetAddress(message.address(), true));
        // Not setSentDate: that one writes this machine's zone.
        letter.setHeader("Date", DATE.format(message.at().atOffset(ZoneOffset.UTC)));
        // RFC 3834 5.1: tells other machines not to answer, and what it is itself.
        letter.setHeader("Auto-Submitted", message.answers().isPresent() ? "auto-replied" : "auto-generated");
        if (message.answers().filter(id -> MESSAGE_ID.matcher(id).matches()).isPresent()) {
            // RFC 3834 3.1.6: refers to what it answers.
            letter.setHeader("In-Reply-To", message.answers().get());
            letter.setHeader("References", message.answers().get());
        }
        return letter;
    }

    String messageId() {
        return messageId;
    }

    /** Plain text; encoded only when it is not ASCII or has a line over the limit. Seven bits on the wire either way. */
    void body(String text, int longestLine) throws MessagingException {
        write(this, text, longestLine);
    }

    /**
     * The same with a picture behind it: the text first, so that a reader that shows no pictures shows all of it (RFC 2046
     * 5.1.3).
     */
    void body(String text, int longestLine, Attachment picture) throws MessagingException {
        var words = new MimeBodyPart();
        write(words, text, longestLine);
        var image = new MimeBodyPart();
        image.setDataHandler(new DataHandler(new ByteArrayDataSource(picture.content(), picture.type())));
        // RFC 2183 2.1: to be shown where it stands, not behind a click.
        image.setDisposition(Part.INLINE);
        image.setFileName(picture.name());
        image.setDescription(Words.headline(picture.words(), LONGEST_DESCRIPTION), "UTF-8");
        image.setHeader("Content-Transfer-Encoding", "base64");
        setContent(new MimeMultipart(words, image));
    }

    private static void write(MimePart part, String text, int longestLine) throws MessagingException {
        boolean ascii = Words.isAscii(text);
        boolean plain = ascii && Words.longestLine(text) <= longestLine;
        part.setText(text, ascii ? "us-ascii" : "UTF-8");
        part.setHeader("Content-Transfer-Encoding", plain ? "7bit" : "quoted-printable");
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
}
