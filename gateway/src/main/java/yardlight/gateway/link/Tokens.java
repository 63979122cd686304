package yardlight.gateway.link;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.wording.Links;

/**
 * The tokens of links: 128 bits of an HMAC of the notice's id, in 22 letters. They are made of what they stand for, so
 * that a notice decided twice gets the same link. The engine never sees one: its texts carry a mask of the same length,
 * and so do the stored notice and the log. The token is put in when a text is sent, and once used it is stored as a hash.
 * The key that they are made with is in the database as well, so a copy of all of it has to be kept like a password.
 */
@Component
public class Tokens implements Links, RealLinks {

    /** How long a link can be followed. */
    public static final Duration LIFE = Duration.ofDays(7);

    private static final Pattern FORM = Pattern.compile("[A-Za-z0-9_-]{22}");
    private static final String MAC = "HmacSHA256";
    private static final int BYTES = 16;

    private static final String PATH = "/a/";

    /** In place of a token, and as long in the alphabet of texts, so that it takes the same room. */
    private static final String MASK = "*".repeat(22);

    private final LinkKeys keys;
    private final Optional<String> address;

    Tokens(LinkKeys keys, @Value("${yardlight.public-url:}") String publicUrl) {
        this.keys = keys;
        this.address = Optional.of(publicUrl.strip().replaceAll("/+$", "")).filter(url -> !url.isEmpty());
    }

    /** With a mask in place of the token: what the engine words is stored and shown. */
    @Override
    public Optional<String> answer(String notice) {
        return address.map(url -> url + PATH + MASK);
    }

    @Override
    public String text(Notice notice) {
        return notice.text().replace(PATH + MASK, PATH + token(notice.id(), notice.queuedAt()));
    }

    /**
     * The token of a notice.
     *
     * @param madeAt when the notice was queued, which says with which key it is made
     */
    public String token(String notice, Instant madeAt) {
        try {
            Mac mac = Mac.getInstance(MAC);
            mac.init(new SecretKeySpec(keys.at(madeAt), MAC));
            byte[] full = mac.doFinal(notice.getBytes(StandardCharsets.UTF_8));
            return Base64.getUrlEncoder().withoutPadding().encodeToString(Arrays.copyOf(full, BYTES));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every JDK has " + MAC, e);
        }
    }

    /** Under which hash a token is stored; empty when it cannot be one of ours. */
    public static Optional<String> hash(String token) {
        return FORM.matcher(token).matches() ? Optional.of(sha256(token)) : Optional.empty();
    }

    /** Under which hash the link of a notice is stored. */
    public String hashFor(String notice, Instant madeAt) {
        return sha256(token(notice, madeAt));
    }

    private static String sha256(String token) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.US_ASCII));
            return HexFormat.of().formatHex(digest);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }
}
