package yardlight.gateway.boxes;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.time.temporal.ChronoUnit;
import java.util.Base64;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import yardlight.escalation.shutin.Request;
import yardlight.gateway.posting.PostingBox;

/**
 * A request as a box is given it, signed with what the box and the gateway both know of its key.
 *
 * @param id the same however often it is given: a box does it once
 * @param ask what is asked
 * @param expires from then on it must not be done any more; in whole seconds, so that little computers can read it
 * @param signature HMAC-SHA-256 of {@link #signed} in Base64
 */
record Ask(String id, String ask, String expires, String signature) {

    private static final String SHUT_IN = "shut-in";
    private static final String ALGORITHM = "HmacSHA256";

    static Ask of(Request request, PostingBox box) {
        String expires = request.expiresAt().truncatedTo(ChronoUnit.SECONDS).toString();
        String signed = signed(box.getName(), request.id(), SHUT_IN, expires);
        return new Ask(
                request.id(), SHUT_IN, expires, sign(signed, HexFormat.of().parseHex(box.hash())));
    }

    /** What is signed: five lines, with a line feed between them and none at the end. */
    static String signed(String box, String id, String ask, String expires) {
        return String.join("\n", "yardlight-request", box, id, ask, expires);
    }

    static String sign(String text, byte[] key) {
        try {
            Mac mac = Mac.getInstance(ALGORITHM);
            mac.init(new SecretKeySpec(key, ALGORITHM));
            return Base64.getEncoder().encodeToString(mac.doFinal(text.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every JDK has " + ALGORITHM, e);
        }
    }
}
