package yardlight.gateway.signature;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.springframework.mock.web.MockHttpServletRequest;

/** The headers of a signed post, by bytes that look for new ways through the code: refused, and never an error. */
class SignatureFuzzTest {

    @FuzzTest(maxDuration = "5m")
    void input(byte[] input) throws IOException {
        var request = new MockHttpServletRequest("POST", "/api/v1/events");
        request.addHeader("Signature-Input", new String(input, StandardCharsets.ISO_8859_1));
        request.addHeader("Signature", "box=:AAAA:");
        try {
            SignedRequest.of(request).check(new byte[32]);
        } catch (BadSignature refused) {
            // What is wrong is said.
        }
    }

    @FuzzTest(maxDuration = "5m")
    void digest(byte[] input) {
        try {
            ContentDigest.check(new String(input, StandardCharsets.ISO_8859_1), new byte[0]);
        } catch (BadSignature refused) {
            // What is wrong is said.
        }
    }
}
