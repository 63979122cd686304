package yardlight.channels.mail;

import com.icegreen.greenmail.util.DummySSLServerSocketFactory;
import java.io.IOException;
import java.io.InputStream;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.X509Certificate;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;

/** The certificate that GreenMail signs itself, also lent to the other server. */
public final class Certificates {

    private static final char[] PASSWORD = "changeit".toCharArray();

    private Certificates() {}

    public static String fingerprint() {
        try {
            KeyStore store = store();
            return OneCertificate.fingerprint(
                    (X509Certificate) store.getCertificate(store.aliases().nextElement()));
        } catch (GeneralSecurityException | IOException e) {
            throw new IllegalStateException(e);
        }
    }

    static SSLContext serverContext() throws GeneralSecurityException, IOException {
        KeyManagerFactory keys = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
        keys.init(store(), PASSWORD);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(keys.getKeyManagers(), null, null);
        return context;
    }

    private static KeyStore store() throws GeneralSecurityException, IOException {
        KeyStore store = KeyStore.getInstance("PKCS12");
        try (InputStream file =
                DummySSLServerSocketFactory.class.getClassLoader().getResourceAsStream("greenmail.p12")) {
            store.load(file, PASSWORD);
        }
        return store;
    }
}
