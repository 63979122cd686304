package yardlight.db.evidence;

import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A head with its signature, in the members of the contract.
 *
 * @param at when something was written last, to the millisecond
 * @param root in hexadecimal
 * @param publicKey the key in the form of RFC 8410, in hexadecimal: Base64 can write the same bytes in two ways
 * @param signature in hexadecimal, Ed25519 over the {@code TreeHeadSignature} of RFC 6962, 3.5
 */
public record SignedHead(String at, long first, String publicKey, String root, String signature, long size) {

    private static final Pattern JSON = Pattern.compile(
            "\\{\"at\":\"([0-9T:.Z-]+)\",\"first\":(\\d{1,18}),\"publicKey\":"
                    + "\"([0-9a-f]+)\",\"root\":\"([0-9a-f]{64})\",\"signature\":\"([0-9a-f]+)\",\"size\":(\\d{1,18})}");

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

    /** What {@link #json} wrote; empty when it is anything else. */
    public static Optional<SignedHead> read(String json) {
        Matcher head = JSON.matcher(json);
        return head.matches()
                ? Optional.of(new SignedHead(
                        head.group(1),
                        Long.parseLong(head.group(2)),
                        head.group(3),
                        head.group(4),
                        head.group(5),
                        Long.parseLong(head.group(6))))
                : Optional.empty();
    }
}
