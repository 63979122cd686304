package yardlight.channels.push;

import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.AlgorithmParameters;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.spec.ECGenParameterSpec;
import java.security.spec.ECParameterSpec;
import java.security.spec.ECPoint;
import java.security.spec.ECPrivateKeySpec;
import java.security.spec.ECPublicKeySpec;
import java.util.Arrays;
import java.util.Base64;
import javax.crypto.Cipher;
import javax.crypto.KeyAgreement;
import javax.crypto.Mac;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * The receiving side of RFC 8291, written from its section 3.4 with the JDK alone, with the keys of the example in its
 * section 5. {@code Rfc8291AgainstTest} holds it against the message of that example.
 */
public final class Browser {

    static final String KEY = "BCVxsr7N_eNgVRqvHtD0zTZsEc6-VV-JvLexhqUzORcxaOzi6-AYWXvTBHm4bjyPjs7Vd8pZGH6SRpkNtoIAiw4";
    static final String PRIVATE_KEY = "q1dXpw3UpT5VOmu_cf_v6ih07Aems3njxI-JWgLcM94";
    static final String SECRET = "BTBZMqHH6r4Tts7J_aSIgg";

    private static final int SALT = 16;
    private static final int TAG_BITS = 128;

    private Browser() {}

    /** @throws GeneralSecurityException if it was not written for this browser */
    static byte[] open(byte[] body) throws GeneralSecurityException {
        ByteBuffer in = ByteBuffer.wrap(body);
        byte[] salt = take(in, SALT);
        int record = in.getInt();
        byte[] sender = take(in, in.get());
        byte[] sealed = take(in, in.remaining());
        if (sealed.length > record) {
            throw new GeneralSecurityException("more than one record, which RFC 8291 4 forbids");
        }
        byte[] shared = agree(sender);
        byte[] info = concat("WebPush: info\0".getBytes(StandardCharsets.US_ASCII), bytes(KEY), sender);
        byte[] input = expand(mac(bytes(SECRET), shared), info, 32);
        byte[] pseudoRandom = mac(salt, input);
        byte[] key = expand(pseudoRandom, ascii("Content-Encoding: aes128gcm\0"), 16);
        byte[] nonce = expand(pseudoRandom, ascii("Content-Encoding: nonce\0"), 12);

        Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
        cipher.init(Cipher.DECRYPT_MODE, new SecretKeySpec(key, "AES"), new GCMParameterSpec(TAG_BITS, nonce));
        byte[] padded = cipher.doFinal(sealed);
        int end = padded.length - 1;
        while (padded[end] == 0) {
            end--;
        }
        if (padded[end] != 2) {
            throw new GeneralSecurityException("not the delimiter of a last record, RFC 8188 2");
        }
        return Arrays.copyOf(padded, end);
    }

    /** A point of P-256 as 65 bytes, for whoever verifies. */
    static PublicKey publicKey(byte[] point) throws GeneralSecurityException {
        BigInteger x = new BigInteger(1, Arrays.copyOfRange(point, 1, 33));
        BigInteger y = new BigInteger(1, Arrays.copyOfRange(point, 33, 65));
        return KeyFactory.getInstance("EC").generatePublic(new ECPublicKeySpec(new ECPoint(x, y), curve()));
    }

    static byte[] bytes(String base64) {
        return Base64.getUrlDecoder().decode(base64);
    }

    private static byte[] agree(byte[] sender) throws GeneralSecurityException {
        PrivateKey ours = KeyFactory.getInstance("EC")
                .generatePrivate(new ECPrivateKeySpec(new BigInteger(1, bytes(PRIVATE_KEY)), curve()));
        KeyAgreement agreement = KeyAgreement.getInstance("ECDH");
        agreement.init(ours);
        agreement.doPhase(publicKey(sender), true);
        return agreement.generateSecret();
    }

    private static ECParameterSpec curve() throws GeneralSecurityException {
        AlgorithmParameters parameters = AlgorithmParameters.getInstance("EC");
        parameters.init(new ECGenParameterSpec("secp256r1"));
        return parameters.getParameterSpec(ECParameterSpec.class);
    }

    /** RFC 5869 2.3, of which one block is enough here. */
    private static byte[] expand(byte[] key, byte[] info, int length) throws GeneralSecurityException {
        return Arrays.copyOf(mac(key, concat(info, new byte[] {1})), length);
    }

    private static byte[] mac(byte[] key, byte[] data) throws GeneralSecurityException {
        Mac mac = Mac.getInstance("HmacSHA256");
        mac.init(new SecretKeySpec(key, "HmacSHA256"));
        return mac.doFinal(data);
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    private static byte[] take(ByteBuffer from, int length) {
        byte[] taken = new byte[length];
        from.get(taken);
        return taken;
    }

    private static byte[] concat(byte[]... parts) {
        ByteBuffer whole = ByteBuffer.allocate(
                Arrays.stream(parts).mapToInt(part -> part.length).sum());
        for (byte[] part : parts) {
            whole.put(part);
        }
        return whole.array();
    }
}
