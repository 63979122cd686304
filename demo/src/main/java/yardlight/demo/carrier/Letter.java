package yardlight.demo.carrier;

import jakarta.mail.BodyPart;
import jakarta.mail.MessagingException;
import jakarta.mail.Multipart;
import jakarta.mail.Part;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.util.Optional;

/**
 * A message that was taken.
 *
 * @param to address of the recipient
 * @param subject empty if there was none
 * @param body its first plain text, without the white space at its ends
 * @param messageId as the header has it; the same message sent twice has the same one
 */
public record Letter(String to, String subject, String body, String messageId) {

    static Letter of(String to, MimeMessage message) throws MessagingException, IOException {
        return new Letter(
                to,
                Optional.ofNullable(message.getSubject()).orElse(""),
                text(message).orElse("").strip(),
                Optional.ofNullable(message.getMessageID()).orElse(""));
    }

    private static Optional<String> text(Part part) throws MessagingException, IOException {
        if (part.isMimeType("text/plain")) {
            return Optional.of(part.getContent().toString());
        }
        if (part.getContent() instanceof Multipart parts) {
            for (int i = 0; i < parts.getCount(); i++) {
                BodyPart inner = parts.getBodyPart(i);
                Optional<String> found = text(inner);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }
}
