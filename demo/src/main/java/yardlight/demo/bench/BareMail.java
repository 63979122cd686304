package yardlight.demo.bench;

import jakarta.mail.Address;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.Transport;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.util.Map;
import java.util.Properties;

/** Jakarta Mail with nothing around it: what a text costs at least. */
final class BareMail {

    private static final int WARM_UP = 50;

    private BareMail() {}

    /**
     * Sends messages one after the other over one connection.
     *
     * @param taken when the server had the message to which address, filled by the server
     * @return from the beginning of each send until the server had it
     */
    static long[] nanos(int port, int messages, Map<String, Long> taken) throws MessagingException {
        Properties properties = new Properties();
        properties.put("mail.smtp.host", "127.0.0.1");
        properties.put("mail.smtp.port", String.valueOf(port));
        properties.put("mail.smtp.localhost", "localhost");
        Session session = Session.getInstance(properties);
        long[] nanos = new long[messages];
        try (Transport transport = session.getTransport("smtp")) {
            transport.connect();
            for (int i = -WARM_UP; i < messages; i++) {
                String to = "bare" + i + "@txt.example";
                long begin = System.nanoTime();
                send(transport, session, to);
                if (i >= 0) {
                    nanos[i] = taken.get(to) - begin;
                }
            }
        }
        return nanos;
    }

    private static void send(Transport transport, Session session, String to) throws MessagingException {
        MimeMessage message = new MimeMessage(session);
        message.setFrom("yardlight@gateway.example");
        message.setText("SITE 7 WATER TANK HIGH-HIGH 18.4 ft (limit 18.0) 2:13 AM. Reply OK 47", "US-ASCII");
        message.saveChanges();
        transport.sendMessage(message, new Address[] {new InternetAddress(to)});
    }
}
