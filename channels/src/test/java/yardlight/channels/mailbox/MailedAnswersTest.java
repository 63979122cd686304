package yardlight.channels.mailbox;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.mail.MessagingException;
import jakarta.mail.Multipart;
import jakarta.mail.Part;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yardlight.escalation.reply.ReplyReader;
import yardlight.escalation.reply.Said;

/**
 * Made-up mails of people, whole, in the encodings in which mails come: what they wrote above and below quotations is
 * understood once the mail is taken apart, and nothing acknowledges that was not meant to.
 */
class MailedAnswersTest {

    private static final double MOST_ARE_UNDERSTOOD = 0.9;

    /** @param meant in the words of the index */
    private record Mail(String file, String kind, String meant) {}

    @Test
    void acknowledge_only_what_they_mean_to_and_are_mostly_understood() throws IOException, MessagingException {
        int understood = 0;
        int plain = 0;
        for (Mail mail : mails()) {
            Optional<String> text = text(mail.file());
            if (mail.kind().equals("answer") && text.isPresent()) {
                String said = words(ReplyReader.read(text.get()));
                if (said.matches("(ok|all|hold)\\b.*")) {
                    assertThat(said).as(mail.file()).isEqualTo(mail.meant());
                }
                plain++;
                understood += said.equals(mail.meant()) ? 1 : 0;
            }
        }
        assertThat(plain).isGreaterThan(30);
        assertThat((double) understood / plain).isGreaterThanOrEqualTo(MOST_ARE_UNDERSTOOD);
    }

    private static List<Mail> mails() throws IOException {
        try (var in = MailedAnswersTest.class.getResourceAsStream("index.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(line -> line.split(" ", 4))
                    .map(words -> new Mail(words[0], words[1], words[3]))
                    .toList();
        }
    }

    private static Optional<String> text(String file) throws IOException, MessagingException {
        try (var in = MailedAnswersTest.class.getResourceAsStream(file)) {
            return plain(new MimeMessage(Session.getInstance(new Properties()), in));
        }
    }

    /** The first part that is plain text and says something. */
    private static Optional<String> plain(Part part) throws IOException, MessagingException {
        if (part.isMimeType("text/plain")) {
            return Optional.of((String) part.getContent()).filter(text -> !text.isBlank());
        }
        if (part.getContent() instanceof Multipart parts) {
            for (int i = 0; i < parts.getCount(); i++) {
                Optional<String> found = plain(parts.getBodyPart(i));
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static String words(Said said) {
        if (said instanceof Said.Ok ok) {
            return "ok" + ok.codes().stream().map(code -> " " + code).collect(Collectors.joining());
        }
        if (said instanceof Said.Hold hold) {
            return "hold" + hold.code().map(code -> " " + code).orElse("")
                    + hold.length().map(length -> " " + length).orElse("");
        }
        return said.getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }
}
