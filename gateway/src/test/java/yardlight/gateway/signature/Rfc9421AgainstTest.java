package yardlight.gateway.signature;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockHttpServletRequest;

/**
 * Against the examples of RFC 9421, B.2 and B.2.5, and RFC 9530, B.1 and D: the bytes of B.2.5 as three independent
 * implementations quote them (read), those of RFC 9530 from memory and computed again with another program.
 */
class Rfc9421AgainstTest {

    private static final byte[] TEST_SHARED_SECRET = Base64.getDecoder()
            .decode("uzvJfB4u3N0Jy4T7NZ75MDVcr8zSTInedJtkgcu46YW4XByzNJjxBdtjUkdJPBtbmHhIDi6pcl8jsasjlTMtDQ==");

    private static final String INPUT =
            "sig-b25=(\"date\" \"@authority\" \"content-type\");created=1618884473;keyid=\"test-shared-secret\"";

    private static final String HELLO = "{\"hello\": \"world\"}";

    private static MockHttpServletRequest testRequest() {
        var request = new MockHttpServletRequest("POST", "/foo");
        request.setQueryString("param=Value&Pet=dog");
        request.addHeader("Host", "example.com");
        request.addHeader("Date", "Tue, 20 Apr 2021 02:07:55 GMT");
        request.addHeader("Content-Type", "application/json");
        request.setContent(HELLO.getBytes(StandardCharsets.UTF_8));
        return request;
    }

    @Test
    void the_signature_base_of_b_2_5_is_made() throws BadSignature {
        assertThat(new SignatureBase(testRequest()).of(SignatureInput.of(INPUT)))
                .isEqualTo("""
                    "date": Tue, 20 Apr 2021 02:07:55 GMT
                    "@authority": example.com
                    "content-type": application/json
                    "@signature-params": ("date" "@authority" "content-type");created=1618884473;keyid="test-shared-secret"\
                    """);
    }

    @Test
    void the_signature_of_b_2_5_is_made() throws BadSignature {
        byte[] mac =
                SignedRequest.mac(TEST_SHARED_SECRET, new SignatureBase(testRequest()).of(SignatureInput.of(INPUT)));

        assertThat(Base64.getEncoder().encodeToString(mac)).isEqualTo("pxcQw6G3AjtMBQjwo8XzkZf/bws5LelbaMk5rGIGtE8=");
    }

    @Test
    void method_path_and_query_of_the_test_request_are_those_of_2_2() throws BadSignature {
        SignatureInput input = SignatureInput.of("s=(\"@method\" \"@path\" \"@query\");created=1");

        assertThat(new SignatureBase(testRequest()).of(input))
                .startsWith("\"@method\": POST\n\"@path\": /foo\n\"@query\": ?param=Value&Pet=dog\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sha-512=:WZDPaVn/7XgHaAy8pmojAkGWoRx2UFChF41A2svX+TaPm+AbwAgBWnrIiYllu7BNNyealdVLvRwEmTHWXvJwew==:",
                "sha-256=:X48E9qOokqqrvdts8nOJRJN3OWDUoyWxBf7kbu9DBPE=:",
                "md5=:Sd/dVLAcvNLSq16eXua5uQ==:, sha-256=:X48E9qOokqqrvdts8nOJRJN3OWDUoyWxBf7kbu9DBPE=:"
            })
    void the_digest_of_the_body_is_that_of_rfc_9530(String header) throws BadSignature {
        ContentDigest.check(header, HELLO.getBytes(StandardCharsets.UTF_8));

        assertThatThrownBy(() -> ContentDigest.check(header, (HELLO + "\n").getBytes(StandardCharsets.UTF_8)))
                .isInstanceOf(BadSignature.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "md5=:Sd/dVLAcvNLSq16eXua5uQ==:",
                "sha-256=X48E9qOokqqrvdts8nOJRJN3OWDUoyWxBf7kbu9DBPE=",
                "sha-256=:X48:",
                "sha-256=:X48E9qOokqqrvdts8nOJRJN3OWDUoyWxBf7kbu9DBPE=:, sha-512=:AAAA:"
            })
    void a_digest_that_proves_nothing_is_refused(String header) {
        assertThatThrownBy(() -> ContentDigest.check(header, HELLO.getBytes(StandardCharsets.UTF_8)))
                .isInstanceOf(BadSignature.class);
    }

    /** RFC 8941 4.1 says how it is written; what is written otherwise could be read in two ways. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "s=()",
                "s=(\"@method\"  \"@path\");created=1",
                "s=( \"@method\");created=1",
                "s=(\"@method\" );created=1",
                "s=(\"@method\");created=1, t=(\"@path\");created=1",
                "s=(\"@method\" \"@method\");created=1",
                "s=(\"@method\";req);created=1",
                "s=(\"Date\");created=1",
                "s=(\"@method\");created=1;created=2",
                "s=(\"@method\");created=1.5",
                "s=(\"@method\");created=\"1",
                "s=(\"@method\");keyid=\"a\\\"b\"",
                "S=(\"@method\");created=1",
                "s=(\"@method\");created=99999999999999999999",
                "s=(\"@method\");created=1 ;keyid=\"a\""
            })
    void what_is_not_in_the_one_form_is_refused(String header) {
        if (header.equals("s=()")) {
            assertThatThrownBy(() -> SignedRequest.of(signed(header))).isInstanceOf(BadSignature.class);
        } else {
            assertThatThrownBy(() -> SignatureInput.of(header)).isInstanceOf(BadSignature.class);
        }
    }

    private static MockHttpServletRequest signed(String input) {
        MockHttpServletRequest request = testRequest();
        request.addHeader("Signature-Input", input);
        request.addHeader("Signature", "s=:AAAA:");
        return request;
    }
}
