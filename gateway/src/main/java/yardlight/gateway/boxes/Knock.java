package yardlight.gateway.boxes;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HexFormat;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import yardlight.gateway.problem.Bearer;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.signature.BadSignature;
import yardlight.gateway.signature.SignedRequest;

/**
 * Finds out which box posts: by the key that it shows, or by what it signed with it. The body of the request is read for
 * that, and is still there afterwards: it was waited for before anything else was done.
 */
@Component
class Knock {

    /** How far the clock of a box may be off; a post that is older is not taken, so it need not be remembered longer. */
    static final Duration WINDOW = Duration.ofMinutes(5);

    private final KeyRing keys;
    private final Replays replays;
    private final InstantSource clock;

    Knock(KeyRing keys, Replays replays, InstantSource clock) {
        this.keys = keys;
        this.replays = replays;
        this.clock = clock;
    }

    /**
     * Empty when nothing was shown that could be a key.
     *
     * @throws Problem 401, with what is wrong with the signature
     */
    Optional<KeyRing.Held> who(HttpServletRequest request) throws IOException {
        Optional<KeyRing.Held> held = SignedRequest.is(request)
                ? Optional.of(signed(request))
                : Bearer.token(request).flatMap(keys::shown);
        held.ifPresent(known -> keys.used(known.key().id()));
        return held;
    }

    private KeyRing.Held signed(HttpServletRequest request) throws IOException {
        try {
            return signed(SignedRequest.of(request));
        } catch (BadSignature bad) {
            throw refusal(bad.getMessage());
        }
    }

    private KeyRing.Held signed(SignedRequest post) throws BadSignature, IOException {
        // Of a key that there is not, nothing else is said than of a wrong one.
        KeyRing.Held held = keys.named(post.keyId())
                .orElseThrow(() -> refusal("the signature is not of this request and this key"));
        post.check(HexFormat.of().parseHex(held.key().hash()));
        mustBeOfNow(post);
        if (!replays.isFirst(
                held.key().id(),
                post.nonce(),
                Instant.ofEpochSecond(post.created()).plus(WINDOW))) {
            throw refusal("this post came before; one that is sent again is signed again, with another nonce");
        }
        return held;
    }

    private void mustBeOfNow(SignedRequest post) throws BadSignature {
        long now = clock.instant().getEpochSecond();
        if (Math.abs(now - post.created()) > WINDOW.toSeconds()) {
            throw refusal("created is " + Math.abs(now - post.created()) + " s "
                    + (now > post.created() ? "behind" : "ahead of") + " the gateway's clock, which is at " + now
                    + "; at most " + WINDOW.toSeconds() + " s are taken");
        }
        if (post.expires() <= now) {
            throw refusal("the signature has expired; the gateway's clock is at " + now);
        }
    }

    /** For a box that is set up to sign and shows its key instead. */
    static Problem unsigned(String box) {
        return refusal("box " + box + " is set up to sign its posts; its key alone opens nothing");
    }

    private static Problem refusal(String detail) {
        return Problem.of(HttpStatus.UNAUTHORIZED, detail)
                .with(HttpHeaders.WWW_AUTHENTICATE, Bearer.CHALLENGE)
                .with("Accept-Signature", SignedRequest.WANTED);
    }
}
