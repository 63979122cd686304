package yardlight.gateway.answer;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Optional;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;
import yardlight.gateway.document.Body;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Fields;
import yardlight.gateway.problem.Bearer;
import yardlight.gateway.problem.Problem;

/** Takes texts that came in, from a provider that posts them here with a key of its own. */
@RestController
class RepliesController {

    private static final int LONGEST_ADDRESS = 254;
    private static final int LONGEST_TEXT = 1_000;

    private final Replies replies;
    private final String key;

    RepliesController(Replies replies, @Value("${yardlight.replies.key:}") String key) {
        this.replies = replies;
        this.key = key;
    }

    @PostMapping(path = "/api/v1/replies", produces = MediaType.APPLICATION_JSON_VALUE)
    Replies.Outcome post(HttpServletRequest request) throws IOException {
        mustShowKey(request);
        Document document = Body.json(request);
        var faults = new Faults();
        faults.addAll(document.faults());
        Fields fields = document.fields(faults).needs("from", "text");
        Optional<String> from = fields.text("from", LONGEST_ADDRESS);
        Optional<String> text = fields.text("text", LONGEST_TEXT);
        faults.orNothing();
        return replies.take(new Sender(from.orElseThrow()), text.orElseThrow());
    }

    private void mustShowKey(HttpServletRequest request) {
        if (key.isBlank()) {
            throw Problem.notFound("replies are not taken here; yardlight.replies.key is not set");
        }
        byte[] shown = Bearer.token(request).orElse("").getBytes(StandardCharsets.UTF_8);
        if (!MessageDigest.isEqual(shown, key.getBytes(StandardCharsets.UTF_8))) {
            throw Problem.of(HttpStatus.UNAUTHORIZED, "this needs the key for replies")
                    .with(HttpHeaders.WWW_AUTHENTICATE, Bearer.CHALLENGE);
        }
    }
}
