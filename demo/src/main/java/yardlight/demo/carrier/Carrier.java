package yardlight.demo.carrier;

import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.util.Properties;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.subethamail.smtp.helper.SimpleMessageListener;
import org.subethamail.smtp.server.SMTPServer;

/** Takes mail over SMTP on the loopback interface, for addresses that it knows; others are refused at RCPT. */
public final class Carrier implements AutoCloseable {

    private static final Session NO_SESSION = Session.getInstance(new Properties());

    private final SMTPServer server;

    private Carrier(SMTPServer server) {
        this.server = server;
    }

    /**
     * Opens for business.
     *
     * @param port 0 for any that is free
     * @param knows whether there is such an address
     * @param takes gets each letter before the sender is told that it was taken
     */
    public static Carrier open(int port, Predicate<String> knows, Consumer<Letter> takes) {
        SMTPServer server = SMTPServer.port(port)
                .bindAddress(InetAddress.getLoopbackAddress())
                .hostName("carrier.example")
                .softwareName("stand-in carrier")
                .insertReceivedHeaders(false)
                .simpleMessageListener(listener(knows, takes))
                .build();
        server.start();
        return new Carrier(server);
    }

    public int port() {
        return server.getPortAllocated();
    }

    private static SimpleMessageListener listener(Predicate<String> knows, Consumer<Letter> takes) {
        return new SimpleMessageListener() {
            @Override
            public boolean accept(String from, String recipient) {
                return knows.test(recipient);
            }

            @Override
            public void deliver(String from, String recipient, InputStream data) throws IOException {
                try {
                    takes.accept(Letter.of(recipient, new MimeMessage(NO_SESSION, data)));
                } catch (MessagingException e) {
                    throw new IOException("not a mail message", e);
                }
            }
        };
    }

    @Override
    public void close() {
        server.stop();
    }
}
