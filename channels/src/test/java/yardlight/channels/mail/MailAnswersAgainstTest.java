package yardlight.channels.mail;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.Attempt;
import yardlight.channels.Message;

/**
 * Our mails where answers and reports are heard, read back from the wire by Apache James mime4j: RFC 3834 (read), RFC 3461 4.1
 * and 4.3 (memory).
 */
class MailAnswersAgainstTest {

    private static final Optional<MailNames> NAMES = Optional.of(new MailNames(new byte[] {1, 2, 3}));

    private static Message message(String id, String address) {
        return new Message(id, address, "You have it, Ana.", Instant.EPOCH);
    }

    private static Message answering(String id) {
        return new Message("answer.1", "ana@example.org", "You have it, Ana.", Instant.EPOCH, Optional.of(id));
    }

    // RFC 3834 5.1: auto-replied for what a mail caused. 3.1.6: In-Reply-To is its Message-ID.
    @ParameterizedTest
    @EnumSource(Form.class)
    void an_answer_says_that_it_is_one_and_to_what(Form form) throws Exception {
        Parsed mail = Parsed.of(Posted.by(form, NAMES, answering("<m1@mail.example>")));

        assertThat(mail.named("Auto-Submitted")).containsExactly("auto-replied");
        assertThat(mail.named("In-Reply-To")).containsExactly("<m1@mail.example>");
        assertThat(mail.named("References")).containsExactly("<m1@mail.example>");
        assertThat(mail.text()).startsWith("You have it, Ana.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"uid-7-1", "<a b@c>", "<m1@mail.example>\r\nBcc: x@y.example", "<>", "<a@b><c@d>"})
    void an_answer_to_what_has_no_name_refers_to_nothing(String id) throws Exception {
        Parsed mail = Parsed.of(Posted.by(Form.LETTER, NAMES, answering(id)));

        assertThat(mail.named("Auto-Submitted")).containsExactly("auto-replied");
        assertThat(mail.names()).doesNotContain("In-Reply-To", "References", "Bcc");
    }

    @ParameterizedTest
    @EnumSource(Form.class)
    void a_name_is_a_dot_atom_that_says_its_channel_and_is_good_for_its_address_only(Form form) throws Exception {
        String name = name(form, message("mesa-9.water-tank.3.2", "ana@example.org"));

        assertThat(name)
                .matches("<[A-Za-z0-9!#$%&'*+/=?^_`{|}~-]+(\\.[A-Za-z0-9!#$%&'*+/=?^_`{|}~-]+)*@ranch\\.example>");
        assertThat(MailNames.channel(name)).contains(form.channel());
        MailNames names = NAMES.orElseThrow();
        assertThat(names.wentTo(name, "ANA@example.org")).isTrue();
        assertThat(names.wentTo(name, "ben@example.org")).isFalse();
        assertThat(names.wentTo(name.replace("3%2E2", "3%2E1"), "ana@example.org"))
                .isFalse();
        assertThat(names.wentTo(name.replaceFirst("\\.[mt]", form == Form.TEXT ? ".m" : ".t"), "ana@example.org"))
                .isFalse();
        assertThat(new MailNames(new byte[] {4}).wentTo(name, "ana@example.org"))
                .isFalse();
    }

    @Test
    void the_same_message_has_the_same_name_and_any_other_has_another() throws Exception {
        Message one = message("a.1", "ana@example.org");

        assertThat(name(Form.LETTER, one)).isEqualTo(name(Form.LETTER, one));
        assertThat(Set.of(
                        name(Form.LETTER, one),
                        name(Form.TEXT, one),
                        name(Form.LETTER, message("a.2", "ana@example.org")),
                        name(Form.LETTER, message("a.1", "ana@work.example"))))
                .hasSize(4);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<callout-7%2E2@ranch.example>",
                "<a.x0123456789abcdef@b>",
                "a.m0123456789abcdef@b",
                "<a.m012@b>",
                ""
            })
    void what_was_not_made_here_has_no_channel(String name) {
        assertThat(MailNames.channel(name)).isEmpty();
        assertThat(NAMES.orElseThrow().wentTo(name, "ana@example.org")).isFalse();
    }

    @ParameterizedTest
    @EnumSource(Form.class)
    void what_was_taken_is_called_by_its_name_where_reports_are_heard_and_only_there(Form form) throws Exception {
        try (ScriptedServer server = new ScriptedServer();
                SmtpChannel heard = channel(form, server, NAMES);
                SmtpChannel unheard = channel(form, server, Optional.empty())) {
            Attempt attempt = heard.send(message("a.1", "ana@example.org"));

            assertThat(attempt.reference())
                    .contains(Wire.of(server.mails.get(0).text()).only("Message-ID"));
            assertThat(unheard.send(message("a.1", "ana@example.org")).reference())
                    .isEmpty();
        }
    }

    @Test
    void reports_are_asked_for_where_the_server_can_and_they_are_heard() throws Exception {
        try (ScriptedServer server = new ScriptedServer();
                SmtpChannel heard = channel(Form.LETTER, server, NAMES);
                SmtpChannel unheard = channel(Form.LETTER, server, Optional.empty())) {
            heard.send(message("a.1", "ana@example.org"));
            assertThat(server.commands).noneMatch(line -> line.contains("NOTIFY") || line.contains("RET="));
            server.says("EHLO", "250-scripted.example\r\n250 DSN");
            unheard.send(message("a.1", "ana@example.org"));
            assertThat(server.commands).noneMatch(line -> line.contains("NOTIFY") || line.contains("RET="));

            try (SmtpChannel again = channel(Form.LETTER, server, NAMES)) {
                again.send(message("a.1", "ana@example.org"));
            }

            assertThat(server.commands)
                    .contains(
                            "MAIL FROM:<yardlight@ranch.example> RET=HDRS",
                            "RCPT TO:<ana@example.org> NOTIFY=SUCCESS,FAILURE,DELAY");
        }
    }

    private static SmtpChannel channel(Form form, ScriptedServer server, Optional<MailNames> names) {
        return new SmtpChannel(form, Optional.of(Settings.plain(server.port())), names, Connections.IDLE);
    }

    private static String name(Form form, Message message) throws IOException {
        return Wire.of(Posted.by(form, NAMES, message)).only("Message-ID");
    }
}
