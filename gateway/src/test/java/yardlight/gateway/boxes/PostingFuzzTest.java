package yardlight.gateway.boxes;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.util.Optional;
import org.springframework.mock.web.MockHttpServletRequest;
import yardlight.escalation.Fixtures;
import yardlight.gateway.TestGateway;
import yardlight.gateway.document.Body;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Format;
import yardlight.gateway.posting.PostingBox;
import yardlight.gateway.posting.When;
import yardlight.gateway.problem.Problem;

/** What a box posts, by bytes that look for new ways through the code: taken or refused, and never an error. */
class PostingFuzzTest {

    private static final PostingReader READER =
            new PostingReader(new EventReader(new PostingBox(Fixtures.aBox(), ""), TestGateway.NOW));

    @FuzzTest(maxDuration = "5m")
    void json(byte[] input) throws IOException {
        post(Format.JSON, input);
    }

    @FuzzTest(maxDuration = "5m")
    void lines(byte[] input) throws IOException {
        post(Format.LINES, input);
    }

    @FuzzTest(maxDuration = "5m")
    void form(byte[] input) throws IOException {
        post(Format.FORM, input);
    }

    @FuzzTest(maxDuration = "5m")
    void heartbeat(byte[] input) throws IOException {
        try {
            var faults = new Faults();
            Document document = Document.json(text(input));
            HeartbeatReader.read(document.fields(faults), When.of(Optional.empty(), TestGateway.NOW));
        } catch (Problem refused) {
            // What is wrong is said.
        }
    }

    private static void post(Format format, byte[] input) throws IOException {
        try {
            READER.read(Optional.of(format), text(input));
        } catch (Problem refused) {
            // What is wrong is said.
        }
    }

    private static String text(byte[] input) throws IOException {
        var request = new MockHttpServletRequest();
        request.setContent(input);
        return Body.text(request, Body.USUAL);
    }
}
