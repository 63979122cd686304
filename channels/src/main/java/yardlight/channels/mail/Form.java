package yardlight.channels.mail;

import jakarta.mail.MessagingException;
import java.util.Optional;
import java.util.stream.Stream;
import yardlight.channels.Attachment;
import yardlight.channels.Message;

/** How a message looks on its way: the two channels differ in nothing else. */
enum Form {
    /** A short mail for a person's mailbox. */
    LETTER("mail", 'm') {
        @Override
        Letter write(Sender sender, Message message) throws MessagingException {
            String text = Words.clean(message.text());
            Letter letter = Letter.start(this, sender, message);
            letter.setSubject(Words.headline(text, LONGEST_SUBJECT), "UTF-8");
            String signature = "\n\n-- \nYardlight, notice " + message.id();
            if (message.attachment().isPresent()) {
                Attachment picture = message.attachment().get();
                letter.body(text + "\n\n" + Words.clean(picture.words()) + signature, POLITE_LINE, picture);
            } else {
                letter.body(text + signature, POLITE_LINE);
            }
            return letter.finish();
        }
    },
    /**
     * For a carrier's gateway that makes a text of it. No subject: carriers put it before the text, or in brackets. The
     * body is the text and nothing else, so that what fits into one segment still does when it arrives.
     */
    TEXT("sms-mail", 't') {
        @Override
        Letter write(Sender sender, Message message) throws MessagingException {
            Letter letter = Letter.start(this, sender, message);
            letter.body(Words.clean(message.text()), LONGEST_LINE);
            return letter.finish();
        }
    };

    /** With its field name it stays on one line. */
    private static final int LONGEST_SUBJECT = 60;
    /** RFC 5322 2.1.1: a line should have at most 78 characters. */
    private static final int POLITE_LINE = 78;
    /** RFC 5322 2.1.1: a line must have at most 998 characters. */
    private static final int LONGEST_LINE = 998;

    private final String channel;
    private final char letter;

    Form(String channel, char letter) {
        this.channel = channel;
        this.letter = letter;
    }

    static Optional<Form> of(char letter) {
        return Stream.of(values()).filter(form -> form.letter == letter).findFirst();
    }

    String channel() {
        return channel;
    }

    /** Says in the name of a mail which of them it is. */
    char letter() {
        return letter;
    }

    abstract Letter write(Sender sender, Message message) throws MessagingException;
}
