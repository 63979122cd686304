package yardlight.gateway.boxes;

import java.security.Principal;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.db.boxkey.BoxKey;
import yardlight.db.boxkey.BoxKeys;
import yardlight.gateway.wire.Keys;

/** Makes keys of 256 random bits, of which only a hash is kept, and revokes them. */
@Component
class OwnersKeys implements Keys {

    private final BoxKeys keys;
    private final KeyRing ring;
    private final LastUses uses;
    private final KeyLines lines;
    private final InstantSource clock;
    private final SecureRandom random = new SecureRandom();

    OwnersKeys(BoxKeys keys, KeyRing ring, LastUses uses, KeyLines lines, InstantSource clock) {
        this.keys = keys;
        this.ring = ring;
        this.uses = uses;
        this.lines = lines;
        this.clock = clock;
    }

    @Override
    public List<Known> of(String box) {
        Instant now = clock.instant();
        return keys.of(box).stream().map(key -> known(key, now)).toList();
    }

    private Known known(BoxKey key, Instant now) {
        Optional<Instant> here = uses.last(key.id())
                .filter(at -> key.usedAt().filter(at::isBefore).isEmpty());
        return new Known(
                key.id(), key.createdAt(), key.endsAt(), key.revokedAt(), here.or(key::usedAt), key.goodAt(now));
    }

    @Override
    public Fresh make(String box, Optional<Duration> othersEndAfter, Principal by) {
        lines.site(box);
        Instant now = clock.instant();
        Optional<Instant> othersEnd = othersEndAfter.map(now::plus);
        String key = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes(32));
        BoxKey made = BoxKey.made(HexFormat.of().formatHex(bytes(8)), box, KeyRing.hash(key), now);
        othersEnd.ifPresentOrElse(end -> keys.addInPlaceOfOthers(made, end), () -> keys.add(made));
        ring.forgetEnded();
        lines.made(by, made, othersEnd);
        return new Fresh(made.id(), key, othersEnd);
    }

    @Override
    public boolean revoke(String box, String id, Principal by) {
        if (!keys.revoke(box, id, clock.instant())) {
            return false;
        }
        ring.forgetEnded();
        lines.revoked(by, box, id);
        return true;
    }

    private byte[] bytes(int count) {
        var bytes = new byte[count];
        random.nextBytes(bytes);
        return bytes;
    }
}
