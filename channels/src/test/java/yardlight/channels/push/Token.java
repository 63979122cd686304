package yardlight.channels.push;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.Signature;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Reads and verifies what a sender shows a push service, RFC 8292 section 3, with the JDK's own reading of the signature.
 *
 * @param claims of a token whose signature is that of the key
 * @param key base64url
 */
public record Token(JsonNode claims, String key) {

    private static final Pattern SHOWN =
            Pattern.compile("vapid\\s+t=([\\w-]+)\\.([\\w-]+)\\.([\\w-]+),\\s*k=([\\w-]+)");
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** @throws GeneralSecurityException if the signature is not that of the key */
    public static Token in(String authorization) throws GeneralSecurityException {
        Matcher shown = SHOWN.matcher(authorization);
        if (!shown.matches()) {
            throw new GeneralSecurityException("not as in RFC 8292 3: " + authorization);
        }
        Signature signature = Signature.getInstance("SHA256withECDSAinP1363Format");
        signature.initVerify(Browser.publicKey(Browser.bytes(shown.group(4))));
        signature.update((shown.group(1) + "." + shown.group(2)).getBytes(StandardCharsets.US_ASCII));
        if (!signature.verify(Browser.bytes(shown.group(3)))) {
            throw new GeneralSecurityException("signed with another key");
        }
        if (!JSON.readTree(Browser.bytes(shown.group(1)))
                .get("alg")
                .stringValue()
                .equals("ES256")) {
            throw new GeneralSecurityException("not ES256, RFC 8292 2");
        }
        return new Token(JSON.readTree(Browser.bytes(shown.group(2))), shown.group(4));
    }
}
