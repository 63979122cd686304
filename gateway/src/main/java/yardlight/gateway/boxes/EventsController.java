package yardlight.gateway.boxes;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import yardlight.escalation.Answer;
import yardlight.gateway.document.Body;
import yardlight.gateway.document.Format;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.lane.TooManyPosts;
import yardlight.gateway.posting.Allowance;
import yardlight.gateway.posting.PostingBox;
import yardlight.gateway.wire.Posts;

/** Takes what boxes report. */
@RestController
class EventsController {

    private static final int EVENTS_FOR_A_TOKEN = 100;

    private final Lane lane;
    private final Allowance allowance;
    private final Posts posts;
    private final InstantSource clock;

    EventsController(Lane lane, Allowance allowance, Posts posts, InstantSource clock) {
        this.lane = lane;
        this.allowance = allowance;
        this.posts = posts;
        this.clock = clock;
    }

    /** What a box is told: when its post arrived and what came of each event. */
    record Receipt(Instant received, List<Map<String, Object>> results) {}

    @PostMapping(path = "/api/v1/events", produces = MediaType.APPLICATION_JSON_VALUE)
    @ResponseStatus(HttpStatus.ACCEPTED)
    Receipt post(HttpServletRequest request, @AuthenticationPrincipal PostingBox box) throws IOException {
        Instant received = clock.instant();
        boolean spent = !allowance.take(box.getName(), 1);
        String body = Body.text(request, Format.LINES.claimedBy(request) ? Body.LARGEST_POST : Body.USUAL);
        Posting posting = new PostingReader(new EventReader(box, received)).read(Format.of(request, body), body);
        spent |= !allowance.take(box.getName(), (posting.events().size() - 1) / EVENTS_FOR_A_TOKEN);
        List<Answer.Result> results = decide(box, posting, spent);
        posts.tell(request, box.getName(), () -> Told.events(posting.events()), () -> Told.results(results));
        return new Receipt(received, posting.results(results));
    }

    private List<Answer.Result> decide(PostingBox box, Posting posting, boolean spent) {
        try {
            return lane.events(box.getName(), posting.events(), spent);
        } catch (TooManyPosts repeats) {
            throw allowance.refusal(box.getName());
        }
    }
}
