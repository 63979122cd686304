package yardlight.gateway.shutin;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import tools.jackson.databind.JsonNode;

/**
 * A box as the manual tells people to build it: it checks the signature and the time, does each request once, and remembers
 * which.
 */
final class ReferenceBox {

    private final String name;
    private final byte[] secret;
    private final Set<String> seen = new HashSet<>();

    /** The requests that it carried out, in order. */
    final List<String> done = new ArrayList<>();

    /** Why it left a request alone. */
    final List<String> leftAlone = new ArrayList<>();

    ReferenceBox(String name, String key) {
        this.name = name;
        this.secret = sha256(key);
    }

    /** @param now by its own clock */
    void reads(JsonNode answer, Instant now) {
        for (JsonNode request : answer.path("requests")) {
            take(
                    request.get("id").asString(),
                    request.get("ask").asString(),
                    request.get("expires").asString(),
                    request.get("signature").asString(),
                    now);
        }
    }

    void take(String id, String ask, String expires, String signature, Instant now) {
        String signed = "yardlight-request\n" + name + "\n" + id + "\n" + ask + "\n" + expires;
        if (!MessageDigest.isEqual(hmac(signed), Base64.getDecoder().decode(signature))) {
            leftAlone.add("forged");
        } else if (!now.isBefore(Instant.parse(expires))) {
            leftAlone.add("expired");
        } else if (!seen.add(id)) {
            leftAlone.add("seen");
        } else {
            done.add(id);
        }
    }

    private byte[] hmac(String text) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(secret, "HmacSHA256"));
            return mac.doFinal(text.getBytes(StandardCharsets.UTF_8));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    private static byte[] sha256(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }
}
