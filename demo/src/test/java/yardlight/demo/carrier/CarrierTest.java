package yardlight.demo.carrier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jakarta.mail.MessagingException;
import jakarta.mail.SendFailedException;
import jakarta.mail.Session;
import jakarta.mail.Transport;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.util.List;
import java.util.Properties;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** With Jakarta Mail as the sender, over real SMTP. */
class CarrierTest {

    private final List<Letter> letters = new CopyOnWriteArrayList<>();
    private final Carrier carrier = Carrier.open(0, address -> address.startsWith("5755550101"), letters::add);

    @AfterEach
    void close() {
        carrier.close();
    }

    @Test
    void has_the_letter_before_the_sender_is_told_so() throws MessagingException {
        MimeMessage message = message("5755550101@txt.example");
        message.setText("MESA 9 WATER TANK HIGH-HIGH 18.4 ft (limit 18.0) 2:13 AM. Reply OK 47", "US-ASCII");

        Transport.send(message);

        assertThat(letters).singleElement().satisfies(letter -> {
            assertThat(letter.to()).isEqualTo("5755550101@txt.example");
            assertThat(letter.subject()).isEmpty();
            assertThat(letter.body())
                    .isEqualTo("MESA 9 WATER TANK HIGH-HIGH 18.4 ft (limit 18.0) 2:13 AM. Reply OK 47");
            assertThat(letter.messageId()).isEqualTo(message.getMessageID());
        });
    }

    @Test
    void reads_what_was_encoded_for_the_way() throws MessagingException {
        MimeMessage message = message("5755550101@txt.example");
        message.setText("TANQUE DE AGUA MUY ALTO, a\u00f1adir", "UTF-8");
        message.setHeader("Content-Transfer-Encoding", "quoted-printable");

        Transport.send(message);

        assertThat(letters).extracting(Letter::body).containsExactly("TANQUE DE AGUA MUY ALTO, a\u00f1adir");
    }

    @Test
    void takes_the_plain_text_of_a_letter_with_several_parts() throws MessagingException {
        MimeBodyPart html = new MimeBodyPart();
        html.setContent("<p>tank</p>", "text/html");
        MimeBodyPart plain = new MimeBodyPart();
        plain.setText("tank");
        MimeMessage message = message("5755550101@txt.example");
        message.setContent(new MimeMultipart(html, plain));

        Transport.send(message);

        assertThat(letters).extracting(Letter::body).containsExactly("tank");
    }

    @Test
    void refuses_an_address_that_nobody_has() throws MessagingException {
        MimeMessage message = message("5755550199@txt.example");
        message.setText("tank");

        assertThatThrownBy(() -> Transport.send(message)).isInstanceOf(SendFailedException.class);
        assertThat(letters).isEmpty();
    }

    private MimeMessage message(String to) throws MessagingException {
        Properties properties = new Properties();
        properties.put("mail.smtp.host", "127.0.0.1");
        properties.put("mail.smtp.port", String.valueOf(carrier.port()));
        properties.put("mail.smtp.localhost", "localhost");
        MimeMessage message = new MimeMessage(Session.getInstance(properties));
        message.setFrom("yardlight@gateway.example");
        message.setRecipient(MimeMessage.RecipientType.TO, new InternetAddress(to));
        return message;
    }
}
