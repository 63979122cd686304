package yardlight.gateway.boxes;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import yardlight.escalation.Answer;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.gateway.document.Body;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Fields;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.posting.Allowance;
import yardlight.gateway.posting.PostingBox;
import yardlight.gateway.posting.When;
import yardlight.gateway.wire.Posts;

/** Takes signs of life. */
@RestController
class HeartbeatsController {

    private static final Duration USUAL = Duration.ofMinutes(1);

    private final Lane lane;
    private final Allowance allowance;
    private final Posts posts;
    private final InstantSource clock;

    HeartbeatsController(Lane lane, Allowance allowance, Posts posts, InstantSource clock) {
        this.lane = lane;
        this.allowance = allowance;
        this.posts = posts;
        this.clock = clock;
    }

    /**
     * @param next after which time the next one is expected
     * @param note what was not taken as it was said
     * @param requests what the box is asked to do; there only when there is something
     */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    record Heard(Instant received, Duration next, Optional<String> note, Optional<List<Ask>> requests) {}

    @PostMapping(path = "/api/v1/heartbeats", produces = MediaType.APPLICATION_JSON_VALUE)
    @ResponseStatus(HttpStatus.ACCEPTED)
    Heard post(HttpServletRequest request, @AuthenticationPrincipal PostingBox box) throws IOException {
        Instant received = clock.instant();
        Document document = Body.json(request);
        var faults = new Faults();
        faults.addAll(document.faults());
        Fields said = document.fields(faults);
        When when = When.of(said.instant("at"), received);
        Heartbeat heartbeat = HeartbeatReader.read(said, when);
        faults.orNothing();
        refuseIfSpent(box, heartbeat);
        Optional<List<Ask>> requests = asked(lane.heartbeat(box.getName(), heartbeat), box);
        posts.tell(
                request,
                box.getName(),
                () -> Told.heartbeat(heartbeat),
                () -> when.note().orElse(""));
        return new Heard(received, box.box().every().orElse(USUAL), when.note(), requests);
    }

    private static Optional<List<Ask>> asked(Answer answer, PostingBox box) {
        return answer instanceof Answer.Offered offered
                ? Optional.of(List.of(Ask.of(offered.request(), box)))
                : Optional.empty();
    }

    /** A feed that is off is an alarm, and an alarm is never what gets refused. */
    private void refuseIfSpent(PostingBox box, Heartbeat heartbeat) {
        boolean spent = !allowance.take(box.getName(), 1);
        if (spent && !heartbeat.feeds().containsValue(false)) {
            throw allowance.refusal(box.getName());
        }
    }
}
