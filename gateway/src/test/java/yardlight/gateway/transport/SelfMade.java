package yardlight.gateway.transport;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.X509Certificate;
import java.util.Base64;

/** A certificate for this machine made by the JDK's keytool, and how it is laid down as PEM files, as a renewal does it. */
final class SelfMade {

    private static final char[] PASSWORD = "changeit".toCharArray();
    private static final String ALIAS = "test";

    private final KeyStore store;

    private SelfMade(KeyStore store) {
        this.store = store;
    }

    /** @param name by which one certificate is told from another */
    static SelfMade named(Path folder, String name) throws IOException, GeneralSecurityException, InterruptedException {
        Path file = folder.resolve(name + ".p12");
        Process keytool = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "keytool")
                                .toString(),
                        "-genkeypair",
                        "-keyalg",
                        "EC",
                        "-dname",
                        "CN=" + name,
                        "-alias",
                        ALIAS,
                        "-validity",
                        "2",
                        "-ext",
                        "san=ip:127.0.0.1,dns:localhost",
                        "-storetype",
                        "PKCS12",
                        "-storepass",
                        new String(PASSWORD),
                        "-keystore",
                        file.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(keytool.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (keytool.waitFor() != 0) {
            throw new IOException(said);
        }
        KeyStore store = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(file)) {
            store.load(in, PASSWORD);
        }
        return new SelfMade(store);
    }

    X509Certificate certificate() throws GeneralSecurityException {
        return (X509Certificate) store.getCertificate(ALIAS);
    }

    /** Each file in one step, the key first. */
    void layDown(Path certificate, Path key) throws IOException, GeneralSecurityException {
        write(key, "PRIVATE KEY", store.getKey(ALIAS, PASSWORD).getEncoded());
        write(certificate, "CERTIFICATE", certificate().getEncoded());
    }

    private static void write(Path file, String kind, byte[] content) throws IOException {
        String text = Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(content);
        Path beside = Files.createTempFile(file.getParent(), "new", ".pem");
        Files.writeString(beside, "-----BEGIN " + kind + "-----\n" + text + "\n-----END " + kind + "-----\n");
        Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }
}
