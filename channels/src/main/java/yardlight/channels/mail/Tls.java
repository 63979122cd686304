package yardlight.channels.mail;

import java.security.GeneralSecurityException;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocketFactory;
import javax.net.ssl.TrustManager;

/** Makes the factory of TLS sockets that the settings ask for. */
final class Tls {

    private Tls() {}

    static SSLSocketFactory factory(Optional<String> certificate) {
        if (certificate.isEmpty()) {
            return (SSLSocketFactory) SSLSocketFactory.getDefault();
        }
        try {
            SSLContext context = SSLContext.getInstance("TLS");
            context.init(null, new TrustManager[] {new OneCertificate(certificate.get())}, null);
            return context.getSocketFactory();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this Java has no TLS", e);
        }
    }
}
