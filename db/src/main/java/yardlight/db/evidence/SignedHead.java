package yardlight.db.evidence;

import java.time.temporal.ChronoUnit;
import java.util.HexFormat;

/**
 * A head with its signature, in the members of the contract.
 *
 * @param at when something was written last, to the millisecond
 * @param root in hexadecimal
 * @param publicKey the key in the form of RFC 8410, in hexadecimal: Base64 can write the same bytes in two ways
 * @param signature in hexadecimal, Ed25519 over the {@code TreeHeadSignature} of RFC 6962, 3.5
 */
public record SignedHead(String at, long first, String publicKey, String root, String signature, long size) {

    /** Signs it. */
    public static SignedHead of(LogHead head, HeadKey key) {
        HexFormat hex = HexFormat.of();
        return new SignedHead(
                head.at().truncatedTo(ChronoUnit.MILLIS).toString(),
                head.first(),
                hex.formatHex(key.open()),
                hex.formatHex(head.root()),
                hex.formatHex(key.sign(head)),
                head.size());
    }

    /** As JSON in the canonical form of RFC 8785; nothing in it needs to be escaped. */
    public String json() {
        return "{\"at\":\"" + at + "\",\"first\":" + first + ",\"publicKey\":\"" + publicKey + "\",\"root\":\"" + root
                + "\",\"signature\":\"" + signature + "\",\"size\":" + size + "}";
    }
}
