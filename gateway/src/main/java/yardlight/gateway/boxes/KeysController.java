package yardlight.gateway.boxes;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.net.URI;
import java.security.Principal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import yardlight.gateway.document.Body;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Fields;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.wire.Keys;

/** The owner makes and revokes the keys of boxes. A key is shown once, when it is made. */
@RestController
@RequestMapping("/api/v1/boxes/{box}/keys")
class KeysController {

    private static final Duration LONGEST_OVERLAP = Duration.ofDays(90);

    private final Keys keys;
    private final KeyLines lines;

    KeysController(Keys keys, KeyLines lines) {
        this.keys = keys;
        this.lines = lines;
    }

    /**
     * A key as it is shown this once.
     *
     * @param othersEndAt when the box's other keys end at the latest, if that was asked for
     */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    record Fresh(String id, String key, Optional<Instant> othersEndAt) {}

    /** A key without itself. */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    record Known(
            String id,
            Instant createdAt,
            Optional<Instant> endsAt,
            Optional<Instant> revokedAt,
            Optional<Instant> usedAt) {}

    @PostMapping(produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<Fresh> make(@PathVariable String box, HttpServletRequest request) throws IOException {
        lines.site(box);
        Keys.Fresh made = keys.make(box, endOthersAfter(request), request.getUserPrincipal());
        return ResponseEntity.created(URI.create("/api/v1/boxes/" + box + "/keys/" + made.id()))
                .body(new Fresh(made.id(), made.key(), made.othersEndAt()));
    }

    private static Optional<Duration> endOthersAfter(HttpServletRequest request) throws IOException {
        Document document = Body.json(request);
        var faults = new Faults();
        faults.addAll(document.faults());
        Fields said = document.fields(faults);
        Optional<Duration> overlap = said.duration("endOthersAfter", Duration.ZERO, LONGEST_OVERLAP);
        said.nothingElse();
        faults.orNothing();
        return overlap;
    }

    @GetMapping(produces = MediaType.APPLICATION_JSON_VALUE)
    List<Known> list(@PathVariable String box) {
        lines.site(box);
        return keys.of(box).stream()
                .map(key -> new Known(key.id(), key.createdAt(), key.endsAt(), key.revokedAt(), key.usedAt()))
                .toList();
    }

    @DeleteMapping("/{key}")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void revoke(@PathVariable String box, @PathVariable String key, Principal by) {
        if (!keys.revoke(box, key, by)) {
            throw Problem.notFound("this box has no such key that is still good");
        }
    }
}
