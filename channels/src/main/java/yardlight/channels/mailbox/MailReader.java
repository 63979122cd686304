package yardlight.channels.mailbox;

import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import yardlight.escalation.reply.ReplyReader;
import yardlight.escalation.reply.Said;

/**
 * Says what a mail is. A report of a mail server comes first, for machines write it and it still says something; then
 * whatever else a machine wrote; what is left a person wrote.
 *
 * @param own our own address, in any letter case: nothing from there is an answer
 */
record MailReader(String own) {

    /** What begins like this is about the mail before, and repeats its subject. */
    private static final Pattern ABOUT_ANOTHER = Pattern.compile("(?i)\\s*(re|fwd?|rv|aw|tr|sv)\\s*:.*");

    /**
     * @param mail whole, or cut off after what is worth reading
     * @throws MessagingException when it cannot be read at all
     */
    Meaning read(MimeMessage mail) throws MessagingException, IOException {
        var fields = new Fields(mail::getHeader);
        List<Leaf> leaves = Parts.of(mail);
        Optional<Meaning> report = new Bounces(own.substring(own.lastIndexOf('@') + 1)).read(fields, leaves);
        if (report.isPresent()) {
            return report.get();
        }
        if (Leaf.typeOf(mail).match("multipart/report")) {
            return new Meaning.Automatic("a report");
        }
        for (Leaf leaf : leaves) {
            if (leaf.is("text", "calendar") && !leaf.isAttached()) {
                return new Meaning.Automatic("a calendar's");
            }
        }
        Optional<String> machine = Machines.why(fields);
        if (machine.isPresent()) {
            return new Meaning.Automatic(machine.get());
        }
        return person(fields, leaves);
    }

    private Meaning person(Fields fields, List<Leaf> leaves) throws MessagingException, IOException {
        Optional<String> from = fields.sender();
        if (from.isEmpty()) {
            return new Meaning.Automatic("it does not name one sender");
        }
        if (from.get().equals(own.toLowerCase(Locale.ROOT))) {
            return new Meaning.Automatic("our own, come back");
        }
        var references = new ArrayList<>(fields.messageIds("In-Reply-To"));
        references.addAll(fields.messageIds("References"));
        Optional<String> id = fields.messageIds("Message-ID").stream().findFirst();
        return new Meaning.Answer(from.get(), id, references, text(fields, leaves, references.isEmpty()));
    }

    /** Somebody who writes a mail of their own may put all they have to say into the subject. */
    private static String text(Fields fields, List<Leaf> leaves, boolean begun) throws MessagingException, IOException {
        String body = BodyText.of(leaves);
        String subject = fields.words("Subject").strip();
        boolean own = begun && !ABOUT_ANOTHER.matcher(subject).matches();
        return own && ReplyReader.read(body) instanceof Said.Unclear ? (subject + "\n\n" + body).strip() : body;
    }
}
