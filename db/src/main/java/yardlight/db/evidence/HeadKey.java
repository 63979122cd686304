package yardlight.db.evidence;

import java.nio.ByteBuffer;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.SignatureException;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.Arrays;

/**
 * The key that signs heads: Ed25519 of RFC 8032. What is signed is the {@code TreeHeadSignature} of RFC 6962, 3.5: a zero
 * byte for its version, a one byte for a tree head, the time in milliseconds, the size, and the root.
 */
public final class HeadKey {

    /** The name under which the gateways of a database keep theirs. */
    public static final String NAME = "log-heads";

    private static final String ALGORITHM = "Ed25519";
    private static final byte VERSION = 0;
    private static final byte TREE_HEAD = 1;
    private static final int SIGNED_LENGTH = 2 + 2 * Long.BYTES + 32;
    private static final int LENGTH_BYTES = 1;

    private final PrivateKey secret;
    private final PublicKey open;

    private HeadKey(PrivateKey secret, PublicKey open) {
        this.secret = secret;
        this.open = open;
    }

    /** A new key, as bytes to be kept secret. */
    public static byte[] fresh() {
        try {
            KeyPair pair = KeyPairGenerator.getInstance(ALGORITHM).generateKeyPair();
            byte[] secret = pair.getPrivate().getEncoded();
            byte[] open = pair.getPublic().getEncoded();
            return ByteBuffer.allocate(LENGTH_BYTES + secret.length + open.length)
                    .put((byte) secret.length)
                    .put(secret)
                    .put(open)
                    .array();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java from 15 on has Ed25519", e);
        }
    }

    /**
     * The key that was kept.
     *
     * @throws IllegalArgumentException when these are not the bytes of a key
     */
    public static HeadKey of(byte[] kept) {
        try {
            int end = LENGTH_BYTES + kept[0];
            var factory = KeyFactory.getInstance(ALGORITHM);
            return new HeadKey(
                    factory.generatePrivate(new PKCS8EncodedKeySpec(Arrays.copyOfRange(kept, LENGTH_BYTES, end))),
                    factory.generatePublic(new X509EncodedKeySpec(Arrays.copyOfRange(kept, end, kept.length))));
        } catch (GeneralSecurityException | RuntimeException e) {
            throw new IllegalArgumentException("not the bytes of a key", e);
        }
    }

    /** The public key in the form of RFC 8410 (X.509 SubjectPublicKeyInfo). */
    public byte[] open() {
        return open.getEncoded();
    }

    public byte[] sign(LogHead head) {
        try {
            var signature = Signature.getInstance(ALGORITHM);
            signature.initSign(secret);
            signature.update(signed(head));
            return signature.sign();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("a head could not be signed", e);
        }
    }

    /** Whether this key signed the head. */
    public boolean signed(LogHead head, byte[] signature) {
        try {
            var check = Signature.getInstance(ALGORITHM);
            check.initVerify(open);
            check.update(signed(head));
            return check.verify(signature);
        } catch (SignatureException e) {
            return false;
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java from 15 on has Ed25519", e);
        }
    }

    /** The bytes that are signed. */
    static byte[] signed(LogHead head) {
        return ByteBuffer.allocate(SIGNED_LENGTH)
                .put(VERSION)
                .put(TREE_HEAD)
                .putLong(head.at().toEpochMilli())
                .putLong(head.size())
                .put(head.root())
                .array();
    }
}
