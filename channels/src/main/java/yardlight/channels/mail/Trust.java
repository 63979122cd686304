package yardlight.channels.mail;

import java.security.GeneralSecurityException;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocketFactory;
import javax.net.ssl.TrustManager;

/** Which server certificates are believed, as a factory of TLS sockets. */
public final class Trust {

    private Trust() {}

    /** @param certificate SHA-256 of the one certificate to believe; empty: what this machine trusts */
    public static SSLSocketFactory in(Optional<String> certificate) {
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
