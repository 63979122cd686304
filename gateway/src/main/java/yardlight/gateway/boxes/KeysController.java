package yardlight.gateway.boxes;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.net.URI;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpStatus;
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
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** The owner makes and revokes the keys of boxes. A key is shown once, when it is made. */
@RestController
@RequestMapping("/api/v1/boxes/{box}/keys")
class KeysController {

    private static final Logger LOG = LoggerFactory.getLogger(KeysController.class);

    private final BoxKeys keys;
    private final KeyRing ring;
    private final SetupInForce inForce;
    private final InstantSource clock;
    private final SecureRandom random = new SecureRandom();

    KeysController(BoxKeys keys, KeyRing ring, SetupInForce inForce, InstantSource clock) {
        this.keys = keys;
        this.ring = ring;
        this.inForce = inForce;
        this.clock = clock;
    }

    /** A key as it is shown this once. */
    record Fresh(String id, String key) {}

    /** A key without itself. */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    record Known(String id, Instant createdAt, Optional<Instant> revokedAt) {}

    @PostMapping
    ResponseEntity<Fresh> make(@PathVariable String box) {
        mustBeSetUp(box);
        String key = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes(32));
        String id = HexFormat.of().formatHex(bytes(8));
        keys.add(new BoxKey(id, box, KeyRing.hash(key), clock.instant(), Optional.empty()));
        LOG.info("Made key {} for box {}", id, box);
        return ResponseEntity.created(URI.create("/api/v1/boxes/" + box + "/keys/" + id))
                .body(new Fresh(id, key));
    }

    @GetMapping
    List<Known> list(@PathVariable String box) {
        mustBeSetUp(box);
        return keys.of(box).stream()
                .map(key -> new Known(key.id(), key.createdAt(), key.revokedAt()))
                .toList();
    }

    @DeleteMapping("/{key}")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void revoke(@PathVariable String box, @PathVariable String key) {
        if (!keys.revoke(box, key, clock.instant())) {
            throw Problem.notFound("this box has no such key that is still good");
        }
        ring.forgetRevoked();
        LOG.info("Revoked key {} of box {}", key, box);
    }

    private void mustBeSetUp(String box) {
        if (!inForce.setup().boxes().containsKey(box)) {
            throw Problem.notFound("there is no such box in the setup");
        }
    }

    private byte[] bytes(int count) {
        var bytes = new byte[count];
        random.nextBytes(bytes);
        return bytes;
    }
}
