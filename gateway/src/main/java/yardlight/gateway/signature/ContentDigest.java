package yardlight.gateway.signature;

import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The header {@code Content-Digest} (RFC 9530 2), with the two algorithms that its registry calls active. */
final class ContentDigest {

    private static final Map<String, String> ACTIVE = Map.of("sha-256", "SHA-256", "sha-512", "SHA-512");
    private static final Pattern MEMBER = Pattern.compile("([a-z0-9-]{1,20})=:([A-Za-z0-9+/]{0,100}={0,2}):");

    private ContentDigest() {}

    /** @throws BadSignature unless there is a digest of an algorithm that is known, and all such are of these bytes */
    static void check(String header, byte[] body) throws BadSignature {
        int known = 0;
        for (String written : header.split(", *", -1)) {
            Matcher member = MEMBER.matcher(written.strip());
            if (!member.matches()) {
                throw new BadSignature("Content-Digest must be sha-256=:…: or sha-512=:…: with the digest in Base64");
            }
            String algorithm = ACTIVE.get(member.group(1));
            if (algorithm != null) {
                known++;
                compare(algorithm, member.group(2), body);
            }
        }
        if (known == 0) {
            throw new BadSignature("Content-Digest must have sha-256 or sha-512");
        }
    }

    private static void compare(String algorithm, String shown, byte[] body) throws BadSignature {
        try {
            byte[] digest = MessageDigest.getInstance(algorithm).digest(body);
            if (!MessageDigest.isEqual(digest, Base64.getDecoder().decode(shown))) {
                throw new BadSignature("the body is not the one that Content-Digest is of");
            }
        } catch (IllegalArgumentException e) {
            throw new BadSignature("Content-Digest must be in Base64");
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every JDK has " + algorithm, e);
        }
    }
}
