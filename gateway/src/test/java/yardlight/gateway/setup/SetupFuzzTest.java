package yardlight.gateway.setup;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import yardlight.gateway.document.Document;
import yardlight.gateway.problem.Problem;

/** Setup documents, by bytes that look for new ways through the code: read or refused, and never an error. */
class SetupFuzzTest {

    private static final SetupReader READER = new SetupReader(List.of());

    @FuzzTest(maxDuration = "5m")
    void yaml(byte[] input) {
        try {
            READER.read(Document.setupYaml(new String(input, StandardCharsets.UTF_8)));
        } catch (Problem refused) {
            // What is wrong is said.
        }
    }

    @FuzzTest(maxDuration = "5m")
    void json(byte[] input) {
        try {
            READER.read(Document.setupJson(new String(input, StandardCharsets.UTF_8)));
        } catch (Problem refused) {
            // What is wrong is said.
        }
    }
}
