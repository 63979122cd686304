package yardlight.channels.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.Message;
import yardlight.channels.mail.MailSettings.Tls;

/** CWE-93 and RFC 5322 2.2 (memory): CR or LF inside a value must never make another line of the header. */
class HeaderInjectionAgainstTest {

    static List<String> hostile() {
        return List.of(
                "HIGH\r\nBcc: x@evil.example",
                "HIGH\nBcc: x@evil.example",
                "HIGH\rBcc: x@evil.example",
                "HIGH\r\n\tBcc: x@evil.example",
                "HIGH\u0085Bcc: x@evil.example",
                "HIGH\u2028Bcc: x@evil.example",
                "HIGH\u0000\r\nBcc: x@evil.example",
                "HIGH\u010d\u010aBcc: x@evil.example",
                "\r\n\r\nBcc: x@evil.example",
                "H\u00cdGH =?UTF-8?Q?=0D=0ABcc:_x@evil.example?=");
    }

    // The check value: subject "HIGH" CR LF "Bcc: x@y" gives exactly one Subject and no Bcc.
    @ParameterizedTest
    @MethodSource("hostile")
    void a_text_makes_one_subject_and_no_other_field(String text) throws Exception {
        String wire = Posted.by(Form.LETTER, new Message("callout-7.2", "ana@example.org", text, Instant.EPOCH));

        assertThat(Wire.of(wire).named("Subject")).hasSize(1);
        assertThat(Wire.of(wire).names()).hasSize(9).doesNotContain("Bcc");
        assertThat(Parsed.of(wire).names()).hasSize(9).doesNotContain("Bcc");
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void a_text_by_mail_makes_no_field_at_all(String text) throws Exception {
        String wire = Posted.by(Form.TEXT, new Message("callout-7.2", "ana@example.org", text, Instant.EPOCH));

        assertThat(Wire.of(wire).names()).hasSize(8).doesNotContain("Bcc", "Subject");
    }

    // RFC 5321 4.5.2, read: a dot at the start of a line is doubled; a bare CR or LF must not end the text either.
    @ParameterizedTest
    @ValueSource(strings = {"\r\n.\r\n", "\n.\n", "\r.\r", "\n.\r\n", "\r\n.\n", "\r\n.\r", "\u0085.\u0085"})
    void no_end_of_text_can_be_smuggled_in(String end) throws Exception {
        for (Form form : Form.values()) {
            String text = "one" + end + "MAIL FROM:<x@evil.example>" + end + "two";

            String wire = Posted.by(form, new Message("callout-7.2", "ana@example.org", text, Instant.EPOCH));

            assertThat(wire).contains("one\r\n.\r\nMAIL FROM:<x@evil.example>\r\n.\r\ntwo");
            assertThat(wire.replace("\r\n", "")).doesNotContain("\r").doesNotContain("\n");
        }
    }

    @ParameterizedTest
    @EnumSource(Form.class)
    void control_characters_do_not_travel(Form form) throws Exception {
        Message message =
                new Message("callout-7.2", "ana@example.org", "a\u0000b\u0007c\u001b[2Jd\u007fe\tf", Instant.EPOCH);

        assertThat(Posted.by(form, message)).contains("abc[2Jde\tf");
    }

    @Test
    void a_sender_with_a_line_end_is_not_even_a_setting() {
        assertThatThrownBy(() -> MailSettings.of("localhost", 25, Tls.NONE, "a@b.example\r\nBcc: x@evil.example"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> MailSettings.of("localhost\r\nQUIT", 25, Tls.NONE, "a@b.example"))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
