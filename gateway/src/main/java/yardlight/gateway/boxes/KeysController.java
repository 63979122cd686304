package yardlight.gateway.boxes;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.net.URI;
import java.security.Principal;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Base64;
import java.util.HexFormat;
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
import yardlight.db.boxkey.BoxKey;
import yardlight.db.boxkey.BoxKeys;
import yardlight.gateway.document.Body;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Fields;
import yardlight.gateway.problem.Problem;

/** The owner makes and revokes the keys of boxes. A key is shown once, when it is made. */
@RestController
@RequestMapping("/api/v1/boxes/{box}/keys")
class KeysController {

    private static final Duration LONGEST_OVERLAP = Duration.ofDays(90);

    private final BoxKeys keys;
    private final KeyRing ring;
    private final LastUses uses;
    private final KeyLines lines;
    private final InstantSource clock;
    private final SecureRandom random = new SecureRandom();

    KeysController(BoxKeys keys, KeyRing ring, LastUses uses, KeyLines lines, InstantSource clock) {
        this.keys = keys;
        this.ring = ring;
        this.uses = uses;
        this.lines = lines;
        this.clock = clock;
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
        Instant now = clock.instant();
        Optional<Instant> othersEnd = endOthersAfter(request).map(now::plus);
        String key = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes(32));
        String id = HexFormat.of().formatHex(bytes(8));
        BoxKey made = BoxKey.made(id, box, KeyRing.hash(key), now);
        othersEnd.ifPresentOrElse(end -> keys.addInPlaceOfOthers(made, end), () -> keys.add(made));
        ring.forgetEnded();
        lines.made(request.getUserPrincipal(), made, othersEnd);
        return ResponseEntity.created(URI.create("/api/v1/boxes/" + box + "/keys/" + id))
                .body(new Fresh(id, key, othersEnd));
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
        return keys.of(box).stream().map(this::known).toList();
    }

    private Known known(BoxKey key) {
        Optional<Instant> here = uses.last(key.id())
                .filter(at -> key.usedAt().filter(at::isBefore).isEmpty());
        return new Known(key.id(), key.createdAt(), key.endsAt(), key.revokedAt(), here.or(key::usedAt));
    }

    @DeleteMapping("/{key}")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void revoke(@PathVariable String box, @PathVariable String key, Principal by) {
        if (!keys.revoke(box, key, clock.instant())) {
            throw Problem.notFound("this box has no such key that is still good");
        }
        ring.forgetEnded();
        lines.revoked(by, box, key);
    }

    private byte[] bytes(int count) {
        var bytes = new byte[count];
        random.nextBytes(bytes);
        return bytes;
    }
}
