package yardlight.gateway.boxes;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** Signs as a box does, by RFC 9421 and RFC 9530, written down here a second time. */
record Signer(String keyId, byte[] secret) {

    static Signer with(String keyId, String key) {
        return new Signer(keyId, sha256(key.getBytes(StandardCharsets.UTF_8)));
    }

    /** The three headers, name and value by turns. */
    String[] headers(String path, byte[] body, long created, String nonce) {
        String digest = "sha-256=:" + base64(sha256(body)) + ":";
        String parameters = "(\"@method\" \"@path\" \"content-digest\");created=" + created + ";keyid=\"" + keyId
                + "\";nonce=\"" + nonce + "\"";
        String base = "\"@method\": POST\n\"@path\": " + path + "\n\"content-digest\": " + digest
                + "\n\"@signature-params\": " + parameters;
        return new String[] {
            "Content-Digest", digest, "Signature-Input", "box=" + parameters, "Signature", "box=:" + sign(base) + ":"
        };
    }

    String sign(String base) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(secret, "HmacSHA256"));
            return base64(mac.doFinal(base.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    private static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String base64(byte[] bytes) {
        return Base64.getEncoder().encodeToString(bytes);
    }
}
