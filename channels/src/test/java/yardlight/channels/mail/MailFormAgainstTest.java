package yardlight.channels.mail;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.Message;

/**
 * Our mails against RFC 5322, 2045 to 2047 and 3834, read back from the wire by hand and by Apache James mime4j, which
 * shares nothing with the library that wrote them.
 */
class MailFormAgainstTest {

    private static final Instant AT = Instant.parse("2026-11-25T09:03:05Z");
    private static final String TEXT =
            "MESA 9 WATER TANK HIGH-HIGH 18.4 ft (limit 18.0) 2:13 AM. About 1 h 50 to overflow."
                    + " Reply OK 47 or open https://yard.example/a/Zm9vYmFyYmF6cXV4Zm9vYmFyYmF6cXV4";

    private static Message message(String text) {
        return new Message("callout-7.2", "ana@example.org", text, AT);
    }

    // RFC 5322 3.6, read: these fields, none more than once, and (RFC 3834) Auto-Submitted.
    @Test
    void a_mail_has_these_fields_once_and_no_other() throws Exception {
        Parsed mail = Parsed.of(Posted.by(Form.LETTER, message(TEXT)));

        assertThat(mail.names())
                .containsExactlyInAnyOrder(
                        "From",
                        "To",
                        "Date",
                        "Subject",
                        "Message-ID",
                        "Auto-Submitted",
                        "MIME-Version",
                        "Content-Type",
                        "Content-Transfer-Encoding");
        assertThat(mail.named("From")).containsExactly("yardlight@ranch.example");
        assertThat(mail.named("To")).containsExactly("ana@example.org");
        assertThat(mail.named("MIME-Version")).containsExactly("1.0");
        assertThat(mail.named("Subject")).containsExactly("MESA 9 WATER TANK HIGH-HIGH 18.4 ft (limit 18.0) 2:13 AM.");
    }

    @Test
    void a_text_by_mail_has_no_subject() throws Exception {
        Parsed mail = Parsed.of(Posted.by(Form.TEXT, message(TEXT)));

        assertThat(mail.names())
                .containsExactlyInAnyOrder(
                        "From",
                        "To",
                        "Date",
                        "Message-ID",
                        "Auto-Submitted",
                        "MIME-Version",
                        "Content-Type",
                        "Content-Transfer-Encoding");
    }

    // RFC 5322 3.3, read: Date with a numeric zone. The JDK's own reader of RFC 1123 dates must agree.
    @ParameterizedTest
    @EnumSource(Form.class)
    void the_date_is_when_it_was_written(Form form) throws Exception {
        String date = Wire.of(Posted.by(form, message(TEXT))).only("Date");

        assertThat(date).isEqualTo("Wed, 25 Nov 2026 09:03:05 +0000");
        assertThat(OffsetDateTime.parse(date, DateTimeFormatter.RFC_1123_DATE_TIME))
                .isEqualTo(AT.atOffset(ZoneOffset.UTC));
    }

    // RFC 5322 3.6.4, read: "<" dot-atom "@" domain ">"; atext is letters, digits and !#$%&'*+-/=?^_`{|}~
    @ParameterizedTest
    @ValueSource(strings = {"callout-7.2", "..", "a@b", "<x>", "\"q\"", "mesa-9/water-tank/high:3", "a,b;c"})
    void the_message_id_is_a_dot_atom_and_stays_the_same(String id) throws Exception {
        Message once = new Message(id, "ana@example.org", "one", AT);
        Message again = new Message(id, "ana@example.org", "one", AT.plusSeconds(600));

        String first = Wire.of(Posted.by(Form.TEXT, once)).only("Message-ID");
        String second = Wire.of(Posted.by(Form.TEXT, once, again)).only("Message-ID");

        assertThat(first)
                .isEqualTo(second)
                .matches("<[A-Za-z0-9!#$%&'*+/=?^_`{|}~-]+(\\.[A-Za-z0-9!#$%&'*+/=?^_`{|}~-]+)*@ranch\\.example>");
    }

    @Test
    void different_ids_stay_different() throws Exception {
        Set<String> ids = Set.of(
                messageId("a.b"),
                messageId("a%2Eb"),
                messageId("a+b"),
                messageId("a%b"),
                messageId("a-b"),
                messageId("A.b"));

        assertThat(ids).hasSize(6);
    }

    private static String messageId(String id) throws Exception {
        return Wire.of(Posted.by(Form.TEXT, new Message(id, "ana@example.org", "one", AT)))
                .only("Message-ID");
    }

    // RFC 5322 2.1.1, read: at most 998 characters in a line; a mail keeps to the 78 that it should.
    @Test
    void a_mail_has_no_line_over_78_and_reads_the_same() throws Exception {
        for (String text : new String[] {TEXT, "Ñandú ".repeat(300), "x".repeat(5_000)}) {
            String wire = Posted.by(Form.LETTER, message(text));

            assertThat(wire.split("\r\n")).allMatch(line -> line.length() <= 78);
            assertThat(Parsed.of(wire).text())
                    .isEqualTo(text.strip() + "\r\n\r\n-- \r\nYardlight, notice callout-7.2\r\n");
        }
    }

    // Seven bits, as it stands: the text is the whole body. The line end after it is SMTP's own (RFC 5321 4.1.1.4).
    @Test
    void a_text_by_mail_is_the_text_and_nothing_else() throws Exception {
        for (String text : new String[] {TEXT, "x".repeat(998), ".dot", "two\nlines", "trailing lines\n\n\n"}) {
            Wire wire = Wire.of(Posted.by(Form.TEXT, message(text)));

            assertThat(wire.body()).isEqualTo(text.stripTrailing().replace("\n", "\r\n") + "\r\n");
            assertThat(wire.only("Content-Transfer-Encoding")).isEqualTo("7bit");
            assertThat(wire.only("Content-Type")).isEqualTo("text/plain; charset=us-ascii");
        }
    }

    // RFC 2045 6.7, read (2nd): letters that seven bits do not have travel as quoted-printable and arrive as they were.
    @ParameterizedTest
    @ValueSource(strings = {"Válvula ¿abierta? Ñ ü £ Δ €", "\ud83d\udca7 emoji", "= equals é =20"})
    void a_text_by_mail_keeps_other_letters(String text) throws Exception {
        String wire = Posted.by(Form.TEXT, message(text));

        assertThat(wire.chars()).allMatch(c -> c < 128);
        assertThat(Wire.of(wire).only("Content-Transfer-Encoding")).isEqualTo("quoted-printable");
        assertThat(Parsed.of(wire).text().strip()).isEqualTo(text);
    }

    @Test
    void a_line_that_is_longer_than_the_law_allows_is_still_the_same_text() throws Exception {
        String wire = Posted.by(Form.TEXT, message("x".repeat(999)));

        assertThat(wire.split("\r\n")).allMatch(line -> line.length() <= 998);
        assertThat(Parsed.of(wire).text().strip()).isEqualTo("x".repeat(999));
    }

    // RFC 2047 2: 76 for a line (read in RFC 3834), 75 for a word (memory). The value of check-values.md, recomputed.
    @Test
    void a_subject_with_other_letters_is_made_of_encoded_words() throws Exception {
        String subject = "Tank 3 haut niveau \u2013 18.5 ft";
        String wire = Posted.by(Form.LETTER, message(subject));

        assertThat(Parsed.of(wire).named("Subject")).containsExactly(subject);
        assertThat(Wire.of(wire).only("Subject").split("\\s+"))
                .allMatch(word -> word.length() <= 75 && word.matches("=\\?UTF-8\\?[BQ]\\?[!-~]*\\?="));
        assertThat(Parsed.of("Subject: =?UTF-8?B?VGFuayAzIGhhdXQgbml2ZWF1IOKAkyAxOC41IGZ0?=\r\n\r\nx")
                        .named("Subject"))
                .containsExactly(subject);
    }
}
