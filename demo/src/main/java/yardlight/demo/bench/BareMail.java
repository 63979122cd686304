package yardlight.demo.bench;

import jakarta.mail.Address;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.Transport;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.util.Properties;
import java.util.concurrent.locks.LockSupport;

/** Jakarta Mail with nothing around it, over one connection that stays open: what a text costs at least. */
final class BareMail implements AutoCloseable {

    private final Session session;
    private final Transport transport;
    private final Texts texts;

    BareMail(int port, Texts texts) throws MessagingException {
        Properties properties = new Properties();
        properties.put("mail.smtp.host", "127.0.0.1");
        properties.put("mail.smtp.port", String.valueOf(port));
        properties.put("mail.smtp.localhost", "localhost");
        session = Session.getInstance(properties);
        transport = session.getTransport("smtp");
        transport.connect();
        this.texts = texts;
    }

    /**
     * Sends messages at a rate.
     *
     * @return from the beginning of each send until the server had the message
     */
    long[] nanos(int round, int messages, double perSecond) throws MessagingException {
        long[] nanos = new long[messages];
        long start = System.nanoTime();
        for (int i = 0; i < messages; i++) {
            String to = "bare-" + round + "-" + i + "@txt.example";
            long wanted = start + (long) (i * 1e9 / perSecond);
            for (long left = wanted - System.nanoTime(); left > 0; left = wanted - System.nanoTime()) {
                LockSupport.parkNanos(left);
            }
            long begin = System.nanoTime();
            send(to);
            nanos[i] = texts.first(to) - begin;
        }
        return nanos;
    }

    private void send(String to) throws MessagingException {
        MimeMessage message = new MimeMessage(session);
        message.setFrom("yardlight@gateway.example");
        message.setText("SITE 7 WATER TANK HIGH-HIGH 18.4 ft (limit 18.0) 2:13 AM. Reply OK 47", "US-ASCII");
        message.saveChanges();
        transport.sendMessage(message, new Address[] {new InternetAddress(to)});
    }

    @Override
    public void close() throws MessagingException {
        transport.close();
    }
}
