package yardlight.gateway.signature;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * A request that says that it is signed. It is good once {@link #check} has come back; when it was made and whether it came before is for the
 * one who asks.
 */
public final class SignedRequest {

    /** For the header {@code Accept-Signature} of a refusal (RFC 9421 5.1). */
    public static final String WANTED =
            "box=(\"@method\" \"@path\" \"content-digest\");created;keyid;nonce;alg=\"hmac-sha256\"";

    private static final String INPUT = "Signature-Input";
    private static final String SIGNATURE = "Signature";
    private static final String DIGEST = "content-digest";
    private static final String QUERY = "@query";
    private static final String MAC = "HmacSHA256";
    private static final Pattern VALUE = Pattern.compile("([a-z*][a-z0-9_.*-]*+)=:([A-Za-z0-9+/]{1,100}+={0,2}):");
    private static final Pattern NONCE = Pattern.compile("[!-~]{8,64}");

    private final HttpServletRequest request;
    private final SignatureInput input;
    private final byte[] signature;

    private SignedRequest(HttpServletRequest request, SignatureInput input, byte[] signature) {
        this.request = request;
        this.input = input;
        this.signature = signature;
    }

    /** Whether it says so. */
    public static boolean is(HttpServletRequest request) {
        return request.getHeader(INPUT) != null || request.getHeader(SIGNATURE) != null;
    }

    /**
     * Reads what is said of the signature, and believes none of it.
     *
     * @throws BadSignature when it cannot be read, or does not cover what it must
     */
    public static SignedRequest of(HttpServletRequest request) throws BadSignature {
        SignatureInput input = SignatureInput.of(one(request, INPUT));
        Matcher value = VALUE.matcher(one(request, SIGNATURE));
        if (!value.matches() || !value.group(1).equals(input.label())) {
            throw new BadSignature("Signature must be " + input.label() + "=:…: with the signature in Base64");
        }
        var signed = new SignedRequest(request, input, decoded(value.group(2)));
        signed.mustSay();
        return signed;
    }

    private static String one(HttpServletRequest request, String name) throws BadSignature {
        List<String> values = Collections.list(request.getHeaders(name));
        if (values.size() != 1 || values.get(0).length() > SignatureInput.LONGEST) {
            throw new BadSignature("a signed post has one " + INPUT + " and one " + SIGNATURE + ", of at most "
                    + SignatureInput.LONGEST + " characters");
        }
        return values.get(0).strip();
    }

    private static byte[] decoded(String text) throws BadSignature {
        try {
            return Base64.getDecoder().decode(text);
        } catch (IllegalArgumentException e) {
            throw new BadSignature("Signature must be in Base64");
        }
    }

    private void mustSay() throws BadSignature {
        var missing = new ArrayList<>(List.of("@method", "@path"));
        if (request.getQueryString() != null) {
            missing.add(QUERY);
        }
        missing.removeAll(input.components());
        if (!missing.isEmpty()) {
            throw new BadSignature("the signature must cover " + String.join(" and ", missing));
        }
        boolean complete = input.seconds("created").isPresent()
                && !input.text("keyid").orElse("").isEmpty()
                && NONCE.matcher(input.text("nonce").orElse("")).matches();
        if (!complete) {
            throw new BadSignature("a signature must say created, keyid, and a nonce of 8 to 64 printable characters");
        }
        if (!input.text("alg").orElse("hmac-sha256").equals("hmac-sha256")) {
            throw new BadSignature("the algorithm must be hmac-sha256");
        }
    }

    /**
     * @param key the secret that both sides know
     * @throws BadSignature when it was not made with this key, or the body is another one
     */
    public void check(byte[] key) throws BadSignature, IOException {
        if (!MessageDigest.isEqual(mac(key, new SignatureBase(request).of(input)), signature)) {
            throw new BadSignature("the signature is not of this request and this key");
        }
        byte[] body = request.getInputStream().readAllBytes();
        boolean covered = input.components().contains(DIGEST);
        if (covered) {
            ContentDigest.check(String.join(", ", Collections.list(request.getHeaders(DIGEST))), body);
        } else if (body.length > 0) {
            throw new BadSignature("the signature must cover content-digest when there is a body");
        }
    }

    static byte[] mac(byte[] key, String base) {
        try {
            Mac mac = Mac.getInstance(MAC);
            mac.init(new SecretKeySpec(key, MAC));
            return mac.doFinal(base.getBytes(StandardCharsets.ISO_8859_1));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every JDK has " + MAC, e);
        }
    }

    /** Seconds since 1970, by the clock of the one who signed. */
    public long created() throws BadSignature {
        return input.seconds("created").orElseThrow();
    }

    /** The same, from when on it is not meant any more; the end of time when it does not say. */
    public long expires() throws BadSignature {
        return input.seconds("expires").orElse(Long.MAX_VALUE);
    }

    public String keyId() {
        return input.text("keyid").orElseThrow();
    }

    public String nonce() {
        return input.text("nonce").orElseThrow();
    }
}
