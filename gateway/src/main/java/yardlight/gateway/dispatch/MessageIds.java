package yardlight.gateway.dispatch;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The identity of a notice outside: its own id, or what stands for it where that is longer than a message's id may be. */
final class MessageIds {

    private static final int LONGEST = 128;
    private static final int KEPT = 63;

    private MessageIds() {}

    /** The same for the same notice, always. */
    static String of(String notice) {
        return notice.length() <= LONGEST ? notice : notice.substring(0, KEPT) + "." + digest(notice);
    }

    private static String digest(String notice) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(notice.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(sum);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }
}
