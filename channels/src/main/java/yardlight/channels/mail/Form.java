package yardlight.channels.mail;

import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import yardlight.channels.Message;

/** How a message looks on its way: the two channels differ in nothing else. */
enum Form {
    /** A short mail for a person's mailbox. */
    LETTER("mail") {
        @Override
        MimeMessage write(Session session, String from, Message message) throws MessagingException {
            String text = Words.clean(message.text());
            Letter letter = Letter.start(session, from, message);
            letter.setSubject(Words.headline(text, LONGEST_SUBJECT), "UTF-8");
            letter.body(text + "\n\n-- \nYardlight, notice " + message.id(), POLITE_LINE);
            return letter.finish();
        }
    },
    /**
     * For a carrier's gateway that makes a text of it. No subject: carriers put it before the text, or in brackets. The
     * body is the text and nothing else, so that what fits into one segment still does when it arrives.
     */
    TEXT("sms-mail") {
        @Override
        MimeMessage write(Session session, String from, Message message) throws MessagingException {
            Letter letter = Letter.start(session, from, message);
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

    Form(String channel) {
        this.channel = channel;
    }

    String channel() {
        return channel;
    }

    abstract MimeMessage write(Session session, String from, Message message) throws MessagingException;
}
