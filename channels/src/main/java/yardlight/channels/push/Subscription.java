package yardlight.channels.push;

import java.math.BigInteger;
import java.net.URI;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;
import yardlight.channels.web.Endpoint;

/**
 * What a browser gives to whoever may push to it, as the address of a line: {@code endpoint|p256dh|auth}, the three parts
 * of its JSON form as they stand there. The bar can be in none of them.
 *
 * @param key the point of the browser's key, 65 bytes (RFC 8291 2.1)
 * @param secret 16 bytes (RFC 8291 3.2)
 */
record Subscription(URI endpoint, byte[] key, byte[] secret) {

    private static final int KEY = 65;
    private static final int SECRET = 16;
    private static final int UNCOMPRESSED = 4;

    /** Curve P-256, FIPS 186-4 D.1.2.3. */
    private static final BigInteger P =
            new BigInteger("ffffffff00000001000000000000000000000000ffffffffffffffffffffffff", 16);

    private static final BigInteger B =
            new BigInteger("5ac635d8aa3a93e7b3ebbd55769886bc651d06b0cc53b0f63bce3c3e27d2604b", 16);
    private static final BigInteger THREE = BigInteger.valueOf(3);

    /** Empty if it is none, or one that we do not push to. */
    static Optional<Subscription> of(String address, boolean loopback) {
        if (address.length() > Endpoint.LONGEST + 200) {
            return Optional.empty();
        }
        String[] parts = address.split("\\|", -1);
        if (parts.length != 3) {
            return Optional.empty();
        }
        byte[] key = bytes(parts[1]);
        byte[] secret = bytes(parts[2]);
        return Endpoint.of(parts[0], loopback)
                .filter(endpoint -> isPoint(key) && secret.length == SECRET)
                .map(endpoint -> new Subscription(endpoint, key, secret));
    }

    private static byte[] bytes(String base64) {
        try {
            return Base64.getUrlDecoder().decode(base64);
        } catch (IllegalArgumentException e) {
            return new byte[0];
        }
    }

    /** On the curve: y² = x³ - 3x + b. Another point could be used to ask our keys questions. */
    private static boolean isPoint(byte[] key) {
        if (key.length != KEY || key[0] != UNCOMPRESSED) {
            return false;
        }
        BigInteger x = new BigInteger(1, Arrays.copyOfRange(key, 1, 33));
        BigInteger y = new BigInteger(1, Arrays.copyOfRange(key, 33, KEY));
        BigInteger right = x.multiply(x).subtract(THREE).multiply(x).add(B);
        return x.compareTo(P) < 0
                && y.compareTo(P) < 0
                && y.multiply(y).subtract(right).mod(P).signum() == 0;
    }
}
