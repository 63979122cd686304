package yardlight.channels.mail;

import jakarta.mail.Session;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.util.Properties;
import javax.net.ssl.SSLParameters;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.SSLSocketFactory;

/** The server that takes our mail, as Jakarta Mail and the sockets need to know it. */
final class Office {

    private final MailSettings settings;
    private final SSLSocketFactory tls;
    private final Session session;

    /** @param reports whether anybody hears what mail servers report */
    Office(MailSettings settings, boolean reports) {
        this.settings = settings;
        this.tls = Trust.in(settings.certificate());
        this.session = Session.getInstance(properties(reports));
    }

    MailSettings settings() {
        return settings;
    }

    Session session() {
        return session;
    }

    Dialogue dialogue() {
        return new Dialogue(session, settings);
    }

    /**
     * Connects, with TLS if it comes first. Jakarta Mail could do it too, but would not let us have the socket, and closing
     * it from outside is the only way to end a wait for a server that sends one byte now and then.
     *
     * @param plain not connected yet; it stays beneath whatever is returned
     */
    Socket connect(Socket plain) throws IOException {
        InetAddress found = InetAddress.getByName(settings.host());
        // With the name as it was given, so that certificates are compared with that.
        InetAddress named = InetAddress.getByAddress(settings.host(), found.getAddress());
        plain.setTcpNoDelay(true);
        plain.setKeepAlive(true);
        plain.setSoTimeout((int) settings.timeouts().reply().toMillis());
        plain.connect(new InetSocketAddress(named, settings.port()), (int)
                settings.timeouts().connect().toMillis());
        return settings.tls() == MailSettings.Tls.IMPLICIT ? secured(plain) : plain;
    }

    private Socket secured(Socket plain) throws IOException {
        SSLSocket socket = (SSLSocket) tls.createSocket(plain, settings.host(), settings.port(), true);
        SSLParameters parameters = socket.getSSLParameters();
        parameters.setEndpointIdentificationAlgorithm("HTTPS");
        socket.setSSLParameters(parameters);
        socket.startHandshake();
        return socket;
    }

    private Properties properties(boolean reports) {
        Properties properties = new Properties();
        properties.put("mail.smtp.auth", String.valueOf(settings.login().isPresent()));
        boolean required = settings.tls() == MailSettings.Tls.STARTTLS;
        boolean wanted = required || settings.tls() == MailSettings.Tls.IF_OFFERED;
        properties.put("mail.smtp.starttls.enable", String.valueOf(wanted));
        properties.put("mail.smtp.starttls.required", String.valueOf(required));
        properties.put("mail.smtp.ssl.socketFactory", tls);
        properties.put("mail.smtp.ssl.checkserveridentity", "true");
        if (settings.login().flatMap(MailSettings.Login::tokens).isPresent()) {
            properties.put("mail.smtp.auth.mechanisms", "XOAUTH2");
        }
        if (reports) {
            // RFC 3461 4.1 and 4.3, heeded by Jakarta Mail only where the server offers it.
            properties.put("mail.smtp.dsn.notify", "SUCCESS,FAILURE,DELAY");
            properties.put("mail.smtp.dsn.ret", "HDRS");
        }
        // Nobody waits for the answer to QUIT.
        properties.put("mail.smtp.quitwait", "false");
        return properties;
    }
}
