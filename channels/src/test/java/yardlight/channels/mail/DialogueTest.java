package yardlight.channels.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.channels.Message;

class DialogueTest {

    /** A line that breaks at the moment when the end of the text is written. */
    private static final class Breaking extends Socket {

        Breaking(int port) throws IOException {
            super(InetAddress.getLoopbackAddress(), port);
        }

        @Override
        public OutputStream getOutputStream() throws IOException {
            return new FilterOutputStream(super.getOutputStream()) {
                @Override
                public void write(byte[] bytes, int from, int length) throws IOException {
                    if (new String(bytes, from, length, StandardCharsets.ISO_8859_1).endsWith("\r\n.\r\n")) {
                        throw new IOException("broken pipe");
                    }
                    out.write(bytes, from, length);
                }
            };
        }
    }

    @Test
    void has_not_sent_the_text_when_its_end_could_not_be_written() throws Exception {
        try (ScriptedServer server = new ScriptedServer()) {
            Office office = new Office(Settings.plain(server.port()), false);
            Dialogue dialogue = office.dialogue();
            MimeMessage mail = Form.TEXT.write(
                    new Sender(office.session(), Settings.FROM, Optional.empty()),
                    new Message("callout-7.2", "5755550101@txt.example", "MESA 9", Instant.EPOCH));
            dialogue.connect(new Breaking(server.port()));

            assertThatThrownBy(() -> dialogue.sendMessage(mail, mail.getAllRecipients()))
                    .isInstanceOf(MessagingException.class);
            assertThat(dialogue.stage()).isEqualTo(Stage.DATA);
            assertThat(server.mails).isEmpty();
        }
    }

    @Test
    void does_not_take_the_answer_to_NOOP_for_one_to_the_message() throws Exception {
        try (ScriptedServer server = new ScriptedServer()) {
            Dialogue dialogue = new Office(Settings.plain(server.port()), false).dialogue();
            dialogue.connect(new Socket(InetAddress.getLoopbackAddress(), server.port()));
            dialogue.begin();

            assertThat(dialogue.isConnected()).isTrue();
            assertThat(dialogue.stage()).isEqualTo(Stage.SENDER);
            assertThat(dialogue.reply()).isEmpty();
        }
    }

    @Test
    void forgets_what_was_said_about_the_message_before() throws Exception {
        try (ScriptedServer server = new ScriptedServer()) {
            Office office = new Office(Settings.plain(server.port()), false);
            Dialogue dialogue = office.dialogue();
            MimeMessage mail = Form.TEXT.write(
                    new Sender(office.session(), Settings.FROM, Optional.empty()),
                    new Message("callout-7.2", "5755550101@txt.example", "MESA 9", Instant.EPOCH));
            dialogue.connect(new Socket(InetAddress.getLoopbackAddress(), server.port()));
            dialogue.sendMessage(mail, mail.getAllRecipients());
            assertThat(dialogue.reply())
                    .hasValueSatisfying(reply -> assertThat(reply.code()).isEqualTo(250));

            dialogue.begin();

            assertThat(dialogue.reply()).isEmpty();
        }
    }
}
