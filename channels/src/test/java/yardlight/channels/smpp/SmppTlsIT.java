package yardlight.channels.smpp;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.Message;
import yardlight.channels.smpp.SmppSettings.Timeouts;

/** SMPP with TLS from the first byte, with certificates that the JDK's own keytool makes. */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SmppTlsIT {

    private static final char[] PASSWORD = "changeit".toCharArray();

    /** The other side waits for us as we wait for it. */
    private static final Timeouts IMPATIENT =
            new Timeouts(Duration.ofSeconds(5), Duration.ofSeconds(1), Duration.ofSeconds(20), Duration.ofMinutes(1));

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"localhost, true, ACCEPTED", "other.example, true, DEFERRED", "localhost, false, DEFERRED"})
    void sends_only_to_who_shows_a_certificate_in_the_host_s_name_that_is_trusted(
            String name, boolean trusted, Outcome outcome) throws Exception {
        SSLContext context = context(name);
        ServerSocket door =
                context.getServerSocketFactory().createServerSocket(0, 50, InetAddress.getLoopbackAddress());
        try (StandInCentre centre = new StandInCentre(door);
                SmppChannel channel = SmppChannel.of(
                        Optional.of(settings(centre.port(), Centres.PATIENT)),
                        InstantSource.fixed(Instant.EPOCH),
                        (trusted ? context : SSLContext.getDefault())::getSocketFactory)) {
            Attempt attempt = channel.send(new Message("callout-7.2", "+15755550101", "MESA 9", Instant.EPOCH));

            assertThat(attempt.outcome()).isEqualTo(outcome);
            assertThat(centre.binds).hasSize(outcome == Outcome.ACCEPTED ? 1 : 0);
        }
    }

    @Test
    void says_nothing_to_a_centre_without_TLS() throws Exception {
        try (StandInCentre centre = new StandInCentre();
                SmppChannel channel = SmppChannel.of(
                        Optional.of(settings(centre.port(), IMPATIENT)), InstantSource.fixed(Instant.EPOCH))) {
            Attempt attempt = channel.send(new Message("callout-7.2", "+15755550101", "MESA 9", Instant.EPOCH));

            assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
            assertThat(attempt.general()).isTrue();
            assertThat(centre.binds).isEmpty();
        }
    }

    private static SmppSettings settings(int port, Timeouts timeouts) {
        return new SmppSettings("localhost", port, true, Centres.LOGIN, Optional.empty(), 1, timeouts);
    }

    /** Of a server that shows a certificate in this name, and of a client that trusts it. */
    private SSLContext context(String name) throws GeneralSecurityException, IOException, InterruptedException {
        KeyStore store = store(name);
        KeyManagerFactory keys = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
        keys.init(store, PASSWORD);
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry("centre", store.getCertificate("centre"));
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(keys.getKeyManagers(), trust.getTrustManagers(), null);
        return context;
    }

    private KeyStore store(String name) throws GeneralSecurityException, IOException, InterruptedException {
        Path file = folder.resolve("keys.p12");
        String keytool =
                Path.of(System.getProperty("java.home"), "bin", "keytool").toString();
        String command = "-genkeypair -alias centre -keyalg EC -validity 2 -storetype PKCS12 -dname CN=" + name
                + " -ext SAN=dns:" + name + " -storepass " + new String(PASSWORD) + " -keystore";
        List<String> whole = new ArrayList<>(List.of(keytool));
        whole.addAll(List.of(command.split(" ")));
        whole.add(file.toString());
        Process made = new ProcessBuilder(whole).redirectErrorStream(true).start();
        assertThat(made.waitFor(30, TimeUnit.SECONDS)).isTrue();
        KeyStore store = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(file)) {
            store.load(in, PASSWORD);
        }
        return store;
    }
}
