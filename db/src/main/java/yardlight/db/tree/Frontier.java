package yardlight.db.tree;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The right edge of a growing tree: the roots of its complete subtrees, the largest first, one for each bit that is set in
 * its size. It is all that is needed to add a leaf or to tell the root, 32 bytes for each doubling of the log. Not for use
 * by several threads.
 */
public final class Frontier {

    /** Leaves, or tiles of the level below, in one tile. */
    public static final int TILE = 256;

    private static final int TILE_BITS = 8;

    /** Hears of each tile that is complete: so many leaves, 256 to the power of {@code level}, in one hash. */
    @FunctionalInterface
    public interface Tiles {
        /**
         * @param level 1 for 256 leaves, 2 for 65,536
         * @param place counts the tiles of the level from 0 on
         */
        void complete(int level, long place, byte[] hash);
    }

    private final Hashing hashing = new Hashing();
    private final List<byte[]> edge = new ArrayList<>();
    private long size;

    /** A tree without leaves. */
    public Frontier() {}

    /**
     * The edge of a tree that was kept as {@link #bytes}.
     *
     * @throws IllegalArgumentException when there are not as many hashes as the size has bits set
     */
    public Frontier(long size, byte[] hashes) {
        if (hashes.length != Long.bitCount(size) * Hashing.LENGTH) {
            throw new IllegalArgumentException("the edge of a tree of " + size + " leaves has " + Long.bitCount(size)
                    + " hashes, not " + hashes.length + " bytes");
        }
        this.size = size;
        for (int i = 0; i < hashes.length; i += Hashing.LENGTH) {
            edge.add(Arrays.copyOfRange(hashes, i, i + Hashing.LENGTH));
        }
    }

    /** The number of leaves. */
    public long size() {
        return size;
    }

    /** Adds a leaf, given as its hash. */
    public void add(byte[] leaf, Tiles tiles) {
        byte[] hash = leaf;
        int level = 0;
        while ((size >> level & 1) == 1) {
            hash = hashing.node(edge.remove(edge.size() - 1), hash);
            level++;
            if (level % TILE_BITS == 0) {
                tiles.complete(level / TILE_BITS, size >> level, hash);
            }
        }
        edge.add(hash);
        size++;
    }

    /** The hash that stands for all of it. */
    public byte[] root() {
        if (edge.isEmpty()) {
            return hashing.empty();
        }
        byte[] root = edge.get(edge.size() - 1);
        for (int i = edge.size() - 2; i >= 0; i--) {
            root = hashing.node(edge.get(i), root);
        }
        return root;
    }

    /** The hashes of the edge, one after the other. */
    public byte[] bytes() {
        var bytes = new byte[edge.size() * Hashing.LENGTH];
        for (int i = 0; i < edge.size(); i++) {
            System.arraycopy(edge.get(i), 0, bytes, i * Hashing.LENGTH, Hashing.LENGTH);
        }
        return bytes;
    }
}
