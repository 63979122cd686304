package yardlight.channels.push;

import com.interaso.webpush.VapidKeys;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.Base64;

/**
 * The key pair by which push services know this gateway (RFC 8292). Subscriptions are made with its public half, and work
 * with no other: a key that is lost means that everybody has to subscribe anew.
 */
public final class PushKey {

    private static final int PRIVATE = 32;
    private static final int PUBLIC = 65;

    private final VapidKeys keys;

    private PushKey(VapidKeys keys) {
        this.keys = keys;
    }

    /** A new one, in the form in which it is kept. */
    public static byte[] fresh() {
        VapidKeys keys = VapidKeys.generate();
        byte[] kept = Arrays.copyOf(fixed(keys.getPrivateKey().getS()), PRIVATE + PUBLIC);
        System.arraycopy(keys.getApplicationServerKey(), 0, kept, PRIVATE, PUBLIC);
        return kept;
    }

    /**
     * @param kept what {@link #fresh()} gave: the private number in 32 bytes, then the public point in 65
     * @throws IllegalArgumentException if it is anything else
     */
    public static PushKey of(byte[] kept) {
        if (kept.length != PRIVATE + PUBLIC) {
            throw new IllegalArgumentException("push key must be 97 bytes, and has " + kept.length);
        }
        return new PushKey(VapidKeys.fromUncompressedBytes(
                text(Arrays.copyOfRange(kept, PRIVATE, kept.length)), text(Arrays.copyOf(kept, PRIVATE))));
    }

    /** The public half, in the form in which a browser takes it as {@code applicationServerKey}. */
    public String applicationServerKey() {
        return text(keys.getApplicationServerKey());
    }

    VapidKeys keys() {
        return keys;
    }

    /** Keeps the private half back. */
    @Override
    public String toString() {
        return "PushKey[" + applicationServerKey() + "]";
    }

    private static byte[] fixed(BigInteger number) {
        byte[] bytes = number.toByteArray();
        byte[] fixed = new byte[PRIVATE];
        int length = Math.min(bytes.length, PRIVATE);
        System.arraycopy(bytes, bytes.length - length, fixed, PRIVATE - length, length);
        return fixed;
    }

    private static String text(byte[] bytes) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }
}
