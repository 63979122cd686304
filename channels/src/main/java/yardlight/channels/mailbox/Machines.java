package yardlight.channels.mailbox;

import jakarta.mail.MessagingException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Tells by its header lines that no person sent a mail: RFC 3834, and what is found where its field is missing (common
 * practice, no source).
 */
final class Machines {

    private static final Set<String> PRECEDENCES = Set.of("bulk", "junk", "list", "auto_reply", "auto-reply");

    /** Nothing that a person sends has one of these: lists, mass mail, and programs that answer by themselves. */
    private static final List<String> MARKS = List.of(
            "X-Autoreply",
            "X-Autoreply-From",
            "X-Autorespond",
            "X-Autoresponder",
            "X-Autoresponse",
            "X-Mail-Autoreply",
            "List-Id",
            "List-Unsubscribe",
            "List-Post",
            "Feedback-ID");

    private static final Pattern NOBODY = Pattern.compile(
            "(mailer-daemon|postmaster|(no|do-?not)[-._]?reply|no-?responder|bounces?|notifications?)\\b.*");

    /** As mail programs name what they send by themselves, in front; "Auto:" alone proves nothing (RFC 3834 3.1.5). */
    private static final Pattern SUBJECT =
            Pattern.compile("(auto(matic|mated)?[ -]?(reply|response)|respuesta autom[aá]tica"
                    + "|out of (the )?office|fuera de (la )?oficina)\\b.*");

    private Machines() {}

    /** What gives it away; empty when nothing does. */
    static Optional<String> why(Fields fields) throws MessagingException {
        for (String value : fields.all("Auto-Submitted")) {
            if (!keyword(value).equals("no")) {
                return Optional.of("Auto-Submitted: " + value);
            }
        }
        if (fields.all("Return-Path").stream()
                .anyMatch(path -> path.replace(" ", "").equals("<>"))) {
            return Optional.of("its return path is empty");
        }
        for (String value : fields.all("Precedence")) {
            if (PRECEDENCES.contains(keyword(value))) {
                return Optional.of("Precedence: " + value);
            }
        }
        for (String mark : MARKS) {
            if (fields.has(mark)) {
                return Optional.of("it has a field " + mark);
            }
        }
        if (fields.all("X-Auto-Response-Suppress").stream()
                .anyMatch(value -> !keyword(value).equals("none"))) {
            return Optional.of("it asks for no answers");
        }
        return byWords(fields);
    }

    private static Optional<String> byWords(Fields fields) throws MessagingException {
        if (fields.sender().filter(from -> NOBODY.matcher(from).matches()).isPresent()) {
            return Optional.of("nobody reads what is sent to " + fields.sender().get());
        }
        String subject = fields.words("Subject").strip().toLowerCase(Locale.ROOT);
        return SUBJECT.matcher(subject).matches() ? Optional.of("its subject says so") : Optional.empty();
    }

    /** Without comments and parameters: RFC 3834 5. */
    private static String keyword(String value) {
        return value.replaceAll("\\([^()]*\\)", "").split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
    }
}
