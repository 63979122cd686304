package yardlight.gateway;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.db.boxkey.BoxKey;
import yardlight.db.boxkey.BoxKeys;
import yardlight.db.person.People;
import yardlight.db.person.Person;
import yardlight.db.person.Role;

/** Goes through the doors as the made-up box and the made-up people do. */
@TestComponent
public class Doors {

    private static final String KEY = "the-key-of-mesa-9";

    private final MockMvcTester mvc;

    Doors(MockMvcTester mvc, BoxKeys keys, People people, PasswordEncoder passwords) {
        this.mvc = mvc;
        // Several applications of a test run share the database in memory.
        if (keys.byHash(sha256(KEY)).isEmpty()) {
            keys.add(BoxKey.made("k1", "mesa-9-box", sha256(KEY), TestGateway.NOW));
        }
        for (Role role : Role.values()) {
            people.keep(new Person(role.word(), passwords.encode(GatewayTest.PASSWORD), role), TestGateway.NOW);
        }
    }

    /** Posts as the box of Mesa 9. */
    public MvcTestResult post(String path, String type, String body) {
        return mvc.post()
                .uri(path)
                .header(HttpHeaders.AUTHORIZATION, "Bearer " + KEY)
                .contentType(type)
                .content(body)
                .exchange();
    }

    public MvcTestResult post(String path, String type, byte[] body) {
        return mvc.post()
                .uri(path)
                .header(HttpHeaders.AUTHORIZATION, "Bearer " + KEY)
                .contentType(type)
                .content(body)
                .exchange();
    }

    /** Asks as one of the people, by HTTP Basic as curl does it. */
    public MockMvcTester.MockMvcRequestBuilder as(String login, HttpMethod method, String path) {
        return mvc.method(method).uri(path).header(HttpHeaders.AUTHORIZATION, basic(login));
    }

    /** Asks without saying who. */
    public MockMvcTester.MockMvcRequestBuilder stranger(HttpMethod method, String path) {
        return mvc.method(method).uri(path);
    }

    public static String basic(String login) {
        String pair = login + ":" + GatewayTest.PASSWORD;
        return "Basic " + Base64.getEncoder().encodeToString(pair.getBytes(StandardCharsets.UTF_8));
    }

    private static String sha256(String text) {
        try {
            byte[] digest =
                    java.security.MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return java.util.HexFormat.of().formatHex(digest);
        } catch (java.security.NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
