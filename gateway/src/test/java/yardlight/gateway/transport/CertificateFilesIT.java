package yardlight.gateway.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.X509Certificate;
import java.time.Duration;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLException;
import javax.net.ssl.SSLParameters;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import yardlight.gateway.RunningGateway;

/** TLS by certificate files, as docs/operating.md sets it up, with the certificate replaced while the gateway runs. */
@ExtendWith(OutputCaptureExtension.class)
class CertificateFilesIT {

    private static final Duration SOON = Duration.ofSeconds(30);

    @TempDir
    private static Path folder;

    private static SelfMade first;
    private static SelfMade second;
    private static RunningGateway gateway;
    private static String startedWith;

    @BeforeAll
    static void start(CapturedOutput said) throws Exception {
        first = SelfMade.named(folder, "first");
        second = SelfMade.named(folder, "second");
        first.layDown(certificate(), key());
        gateway = RunningGateway.with(
                "server.ssl.bundle=yardlight",
                "spring.ssl.bundle.pem.yardlight.reload-on-update=true",
                "spring.ssl.bundle.watch.file.quiet-period=1s",
                "spring.ssl.bundle.pem.yardlight.keystore.certificate=" + certificate(),
                "spring.ssl.bundle.pem.yardlight.keystore.private-key=" + key());
        startedWith = said.getAll();
    }

    @AfterAll
    static void stop() {
        gateway.close();
    }

    private static Path certificate() {
        return folder.resolve("certificate.pem");
    }

    private static Path key() {
        return folder.resolve("key.pem");
    }

    @Test
    void does_not_warn_of_plain_http() {
        assertThat(startedWith).doesNotContain("plain HTTP");
    }

    @Test
    void tells_browsers_to_stay_with_it_for_a_year_and_keeps_cookies_off_plain_http() throws Exception {
        HttpResponse<String> page = get(shown(), "/login");

        assertThat(page.headers().firstValue("Strict-Transport-Security"))
                .contains("max-age=31536000 ; includeSubDomains");
        assertThat(page.headers().allValues("Set-Cookie"))
                .isNotEmpty()
                .allSatisfy(cookie -> assertThat(cookie)
                        .startsWith("__Host-XSRF-TOKEN=")
                        .contains("Secure", "HttpOnly", "SameSite=Lax", "Path=/")
                        .doesNotContain("Domain"));
    }

    @Test
    void does_not_speak_what_is_broken() throws Exception {
        assertThat(protocol("TLSv1.3")).isEqualTo("TLSv1.3");
        assertThat(protocol("TLSv1.2")).isEqualTo("TLSv1.2");
        assertThatThrownBy(() -> protocol("TLSv1.1")).isInstanceOf(SSLException.class);
    }

    @Test
    void shows_a_new_certificate_without_a_restart_and_the_old_one_while_the_new_files_are_no_good() throws Exception {
        assertThat(shown()).isEqualTo(first.certificate());

        second.layDown(certificate(), key());

        await().atMost(SOON).until(() -> shown().equals(second.certificate()));
        assertThat(get(second.certificate(), "/actuator/health/liveness").statusCode())
                .isEqualTo(200);
        Files.writeString(certificate(), "-----BEGIN CERTIFICATE-----\nhalf");
        first.layDown(folder.resolve("elsewhere.pem"), folder.resolve("elsewhere-key.pem"));
        assertThat(shown()).isEqualTo(second.certificate());
        first.layDown(certificate(), key());
        await().atMost(SOON).until(() -> shown().equals(first.certificate()));
    }

    private static X509Certificate shown() throws Exception {
        try (SSLSocket socket = socket(SSLContexts.trusting(first, second))) {
            socket.startHandshake();
            return (X509Certificate) socket.getSession().getPeerCertificates()[0];
        }
    }

    private static String protocol(String wanted) throws Exception {
        try (SSLSocket socket = socket(SSLContexts.trusting(first, second))) {
            socket.setEnabledProtocols(new String[] {wanted});
            socket.startHandshake();
            return socket.getSession().getProtocol();
        }
    }

    private static SSLSocket socket(SSLContext context) throws IOException {
        SSLSocket socket = (SSLSocket) context.getSocketFactory().createSocket("127.0.0.1", gateway.port());
        SSLParameters parameters = socket.getSSLParameters();
        parameters.setEndpointIdentificationAlgorithm("HTTPS");
        socket.setSSLParameters(parameters);
        return socket;
    }

    private static HttpResponse<String> get(X509Certificate trusted, String path) throws Exception {
        HttpClient client = HttpClient.newBuilder()
                .sslContext(SSLContexts.trusting(trusted))
                .build();
        URI address = URI.create("https://127.0.0.1:" + gateway.port() + path);
        return client.send(HttpRequest.newBuilder(address).build(), BodyHandlers.ofString());
    }

    /** Contexts that trust these certificates and nothing else. */
    private static final class SSLContexts {

        static SSLContext trusting(SelfMade... made) throws GeneralSecurityException, IOException {
            var certificates = new X509Certificate[made.length];
            for (int i = 0; i < made.length; i++) {
                certificates[i] = made[i].certificate();
            }
            return trusting(certificates);
        }

        static SSLContext trusting(X509Certificate... certificates) throws GeneralSecurityException, IOException {
            KeyStore trusted = KeyStore.getInstance("PKCS12");
            trusted.load(null, null);
            for (int i = 0; i < certificates.length; i++) {
                trusted.setCertificateEntry("trusted-" + i, certificates[i]);
            }
            TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
            trust.init(trusted);
            SSLContext context = SSLContext.getInstance("TLS");
            context.init(null, trust.getTrustManagers(), null);
            return context;
        }
    }
}
