package yardlight.db.tree;

import java.util.ArrayList;
import java.util.List;

/** The definitions of RFC 6962, 2.1, word for word, over leaves in memory; and the checks of RFC 9162, 2.1.3.2 and 2.1.4.2. */
public final class PlainTree {

    private static final Hashing HASHING = new Hashing();

    private PlainTree() {}

    /** MTH of RFC 6962, 2.1, over leaves that are hashed already. */
    public static byte[] root(List<byte[]> leaves) {
        int n = leaves.size();
        if (n == 0) {
            return HASHING.empty();
        }
        if (n == 1) {
            return leaves.get(0);
        }
        int k = 1;
        while (2 * k < n) {
            k *= 2;
        }
        return HASHING.node(root(leaves.subList(0, k)), root(leaves.subList(k, n)));
    }

    /** Whether the path leads from the leaf to the root: RFC 9162, 2.1.3.2. */
    public static boolean included(byte[] leaf, long index, long size, List<byte[]> path, byte[] root) {
        long fn = index;
        long sn = size - 1;
        byte[] r = leaf;
        for (byte[] p : path) {
            if (sn == 0) {
                return false;
            }
            if ((fn & 1) == 1 || fn == sn) {
                r = HASHING.node(p, r);
                while ((fn & 1) == 0 && fn != 0) {
                    fn >>= 1;
                    sn >>= 1;
                }
            } else {
                r = HASHING.node(r, p);
            }
            fn >>= 1;
            sn >>= 1;
        }
        return sn == 0 && java.util.Arrays.equals(r, root);
    }

    /** Whether the first tree is the beginning of the second: RFC 9162, 2.1.4.2. */
    public static boolean consistent(long first, long second, byte[] before, byte[] after, List<byte[]> proof) {
        if (first == second) {
            return proof.isEmpty() && java.util.Arrays.equals(before, after);
        }
        var path = new ArrayList<>(proof);
        if (Long.bitCount(first) == 1) {
            path.add(0, before);
        }
        if (path.isEmpty()) {
            return false;
        }
        long fn = first - 1;
        long sn = second - 1;
        while ((fn & 1) == 1) {
            fn >>= 1;
            sn >>= 1;
        }
        byte[] fr = path.get(0);
        byte[] sr = path.get(0);
        for (byte[] c : path.subList(1, path.size())) {
            if (sn == 0) {
                return false;
            }
            if ((fn & 1) == 1 || fn == sn) {
                fr = HASHING.node(c, fr);
                sr = HASHING.node(c, sr);
                while ((fn & 1) == 0 && fn != 0) {
                    fn >>= 1;
                    sn >>= 1;
                }
            } else {
                sr = HASHING.node(sr, c);
            }
            fn >>= 1;
            sn >>= 1;
        }
        return sn == 0 && java.util.Arrays.equals(fr, before) && java.util.Arrays.equals(sr, after);
    }
}
