package yardlight.channels.mailbox;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.mail.MessagingException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardlight.channels.Receipt.Fate;
import yardlight.escalation.reply.ReplyReader;
import yardlight.escalation.reply.Said;

/**
 * Made-up mails of people, machines and mail servers, whole, in the encodings in which mails come: each is taken for what it is,
 * what a person wrote above and below quotations is understood, and nothing acknowledges that was not meant to.
 */
class MailedAnswersTest {

    private static final double MOST_ARE_UNDERSTOOD = 0.97;

    static List<Mails.Listed> mails() {
        return Mails.listed();
    }

    static Stream<Mails.Listed> answers() {
        return Mails.listed().stream().filter(mail -> mail.kind().equals("answer"));
    }

    @Test
    void there_are_94() {
        assertThat(mails()).hasSize(94);
    }

    @ParameterizedTest
    @MethodSource("mails")
    void each_is_taken_for_what_it_is(Mails.Listed mail) throws IOException, MessagingException {
        Meaning meaning = Mails.read(Mails.file(mail.file()));

        if (meaning instanceof Meaning.Answer answer) {
            assertThat(mail.kind()).isEqualTo("answer");
            assertThat(answer.from()).isEqualTo(mail.from());
        } else if (meaning instanceof Meaning.Report report) {
            assertThat(mail.kind()).isEqualTo("bounce-" + word(report.fate()));
            assertThat(report.about().orElse("-")).isEqualTo(mail.about());
        } else {
            assertThat(mail.kind()).isIn("automatic", "receipt");
        }
    }

    @ParameterizedTest
    @MethodSource("answers")
    void none_acknowledges_that_was_not_meant_to(Mails.Listed mail) throws IOException, MessagingException {
        String said = said(mail);

        if (said.matches("(ok|all|hold)\\b.*")) {
            assertThat(said).isEqualTo(mail.meant());
        }
    }

    @Test
    void nearly_all_are_understood() throws IOException, MessagingException {
        var others = new ArrayList<String>();
        List<Mails.Listed> all = answers().toList();
        for (Mails.Listed mail : all) {
            if (!said(mail).equals(mail.meant())) {
                others.add(mail + ": " + said(mail) + " for " + mail.meant());
            }
        }

        assertThat(others).hasSizeLessThanOrEqualTo((int) (all.size() * (1 - MOST_ARE_UNDERSTOOD)));
    }

    private static String said(Mails.Listed mail) throws MessagingException, IOException {
        return Mails.read(Mails.file(mail.file())) instanceof Meaning.Answer answer
                ? words(ReplyReader.read(answer.text()))
                : "automatic";
    }

    private static String word(Fate fate) {
        return switch (fate) {
            case REFUSED -> "failed";
            case DELAYED -> "delayed";
            case DELIVERED -> "delivered";
        };
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
