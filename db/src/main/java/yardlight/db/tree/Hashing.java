package yardlight.db.tree;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * The hashes of RFC 6962, 2.1: a leaf is SHA-256 over a zero byte and the entry, a node is SHA-256 over a one byte and its
 * two children, so that no node can pass for an entry. Not for use by several threads.
 */
public final class Hashing {

    /** Bytes of a hash. */
    public static final int LENGTH = 32;

    private static final byte LEAF = 0;
    private static final byte NODE = 1;

    private final MessageDigest digest;

    public Hashing() {
        try {
            this.digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** The root of a tree without leaves. */
    public byte[] empty() {
        return digest.digest();
    }

    public byte[] leaf(byte[] entry) {
        digest.update(LEAF);
        return digest.digest(entry);
    }

    public byte[] node(byte[] left, byte[] right) {
        digest.update(NODE);
        digest.update(left);
        return digest.digest(right);
    }
}
