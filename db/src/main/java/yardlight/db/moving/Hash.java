package yardlight.db.moving;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256, by which damage is found. */
final class Hash {

    private Hash() {}

    static MessageDigest fresh() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }

    /** What was digested, in hexadecimal. */
    static String of(MessageDigest sum) {
        return HexFormat.of().formatHex(sum.digest());
    }

    static String of(String text) {
        MessageDigest sum = fresh();
        sum.update(text.getBytes(StandardCharsets.UTF_8));
        return of(sum);
    }
}
