package yardlight.channels.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jakarta.mail.Part;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Base64;
import java.util.Optional;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import yardlight.channels.Attachment;
import yardlight.channels.Message;

/**
 * A mail with a picture, read back from the wire: by Jakarta Mail, by Apache James mime4j, and against RFC 2046 (multipart,
 * the plain text first), RFC 2183 (disposition) and RFC 5322 2.1.1 (78 characters a line).
 */
class PictureAgainstTest {

    /** One white dot. */
    private static final byte[] DOT = Base64.getDecoder()
            .decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAIAAACQd1PeAAAADElEQVR42mP4//8/AAX+Av4N70a4AAAAAElFTkSuQmCC");

    private static final String WORDS = "La curva: VÁLVULA de 1:13 a 2:13, entre 14.1 y 18.4 ft, límite 18.0.";
    private static final String TEXT = "MESA 9 TANQUE DE AGUA MUY ALTO 18.4 ft. Conteste OK 47";

    private static Message message(Form form) {
        String address = form == Form.TEXT ? "5125550101@txt.example" : "ana@example.org";
        return new Message(
                "callout-7.2",
                address,
                TEXT,
                Instant.parse("2026-11-25T09:13:00Z"),
                Optional.empty(),
                Optional.of(new Attachment("curve.png", "image/png", DOT, WORDS)));
    }

    @Test
    void has_the_text_first_and_the_picture_as_it_was_made() throws Exception {
        String wire = Posted.by(Form.LETTER, message(Form.LETTER));

        var mail = new MimeMessage(
                Session.getInstance(new Properties()),
                new ByteArrayInputStream(wire.getBytes(StandardCharsets.ISO_8859_1)));
        assertThat(mail.getSubject()).startsWith("MESA 9 TANQUE DE AGUA MUY ALTO");
        assertThat(mail.isMimeType("multipart/mixed")).isTrue();
        var parts = (MimeMultipart) mail.getContent();
        assertThat(parts.getCount()).isEqualTo(2);
        assertThat((String) parts.getBodyPart(0).getContent()).startsWith(TEXT).contains(WORDS);
        var picture = (MimeBodyPart) parts.getBodyPart(1);
        assertThat(picture.isMimeType("image/png")).isTrue();
        assertThat(picture.getDisposition()).isEqualTo(Part.INLINE);
        assertThat(picture.getFileName()).isEqualTo("curve.png");
        assertThat(picture.getDescription()).isEqualTo(WORDS);
        assertThat(picture.getInputStream().readAllBytes()).isEqualTo(DOT);
    }

    @Test
    void is_read_strictly_by_another_parser_and_has_no_long_lines() throws Exception {
        String wire = Posted.by(Form.LETTER, message(Form.LETTER));

        assertThat(Parsed.of(wire).text()).contains(TEXT).contains(WORDS);
        assertThat(wire.lines()).allMatch(line -> line.length() <= 78);
        assertThat(wire.chars()).allMatch(c -> c < 128);
    }

    /** Carriers make of a picture what they like, and a text has room for none. */
    @Test
    void is_left_out_of_a_text_by_mail() throws Exception {
        String wire = Posted.by(Form.TEXT, message(Form.TEXT));

        assertThat(wire).doesNotContain("multipart").doesNotContain("image/png");
        assertThat(Parsed.of(wire).text()).isEqualToIgnoringWhitespace(TEXT);
    }

    @Test
    void is_small_or_not_there() {
        byte[] large = new byte[Attachment.MOST_BYTES + 1];

        assertThatThrownBy(() -> new Attachment("curve.png", "image/png", large, WORDS))
                .hasMessageContaining("30001");
        assertThatThrownBy(() -> new Attachment("a\r\nb", "image/png", DOT, WORDS))
                .hasMessageContaining("plain file name");
    }
}
