package yardlight.db.tree;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The proofs of RFC 6962, 2.1.1 and 2.1.2, from hashes that are kept: those of the leaves, and of every complete tile. A
 * proof costs a few reads of at most 256 hashes, whatever the size of the tree. Made for one answer, and not for use by
 * several threads.
 */
public final class Tree {

    /** Where the hashes are kept. */
    @FunctionalInterface
    public interface Kept {
        /**
         * The hashes under one tile, by their number; those that do not exist yet, or no more, are left out.
         *
         * @param level of what is wanted: 0 for leaves, 1 for tiles of 256 of them
         * @param place of the tile around them
         */
        Map<Long, byte[]> under(int level, long place);
    }

    private record Tile(int level, long place) {}

    private final Hashing hashing = new Hashing();
    private final Map<Tile, Map<Long, byte[]>> read = new HashMap<>();
    private final Kept kept;

    public Tree(Kept kept) {
        this.kept = kept;
    }

    /**
     * The path from a leaf to the root of the first {@code size} leaves, the nearest hash first; empty when it needs a
     * leaf that is not kept any more.
     *
     * @param leaf its number, from 0 on
     * @throws IllegalArgumentException when the leaf is not among the first {@code size}
     */
    public Optional<List<byte[]>> inclusion(long leaf, long size) {
        if (leaf < 0 || leaf >= size) {
            throw new IllegalArgumentException("leaf must be from 0 to " + (size - 1) + ": " + leaf);
        }
        return unlessCut(() -> {
            var path = new ArrayList<byte[]>();
            inclusion(leaf, 0, size, path);
            return path;
        });
    }

    /**
     * Shows that the first {@code first} of {@code second} leaves are the same; empty when it needs a leaf that is not kept
     * any more.
     *
     * @throws IllegalArgumentException unless 0 &lt; first &lt;= second
     */
    public Optional<List<byte[]>> consistency(long first, long second) {
        if (first <= 0 || first > second) {
            throw new IllegalArgumentException("first must be from 1 to " + second + ": " + first);
        }
        return unlessCut(() -> {
            var proof = new ArrayList<byte[]>();
            consistency(first, 0, second, true, proof);
            return proof;
        });
    }

    /** The root of the first {@code size} leaves; empty when it needs a leaf that is not kept any more. */
    public Optional<byte[]> root(long size) {
        return size == 0 ? Optional.of(hashing.empty()) : unlessCut(() -> hash(0, size));
    }

    private void inclusion(long leaf, long from, long to, List<byte[]> path) {
        if (to - from == 1) {
            return;
        }
        long middle = from + split(to - from);
        if (leaf < middle) {
            inclusion(leaf, from, middle, path);
            path.add(hash(middle, to));
        } else {
            inclusion(leaf, middle, to, path);
            path.add(hash(from, middle));
        }
    }

    /** @param whole whether the reader knows the root of what lies between from and first already */
    private void consistency(long first, long from, long to, boolean whole, List<byte[]> proof) {
        if (first == to) {
            if (!whole) {
                proof.add(hash(from, to));
            }
            return;
        }
        long middle = from + split(to - from);
        if (first <= middle) {
            consistency(first, from, middle, whole, proof);
            proof.add(hash(middle, to));
        } else {
            consistency(first, middle, to, false, proof);
            proof.add(hash(from, middle));
        }
    }

    private byte[] hash(long from, long to) {
        long size = to - from;
        int level = tile(size);
        if (level >= 0) {
            return kept(level, from / size);
        }
        long middle = from + split(size);
        return hashing.node(hash(from, middle), hash(middle, to));
    }

    /** The level of the tile of this size; -1 for none. */
    private static int tile(long size) {
        int level = 0;
        long tile = 1;
        while (tile < size) {
            tile *= Frontier.TILE;
            level++;
        }
        return tile == size ? level : -1;
    }

    /** The largest power of two below the size. */
    private static long split(long size) {
        return Long.highestOneBit(size - 1);
    }

    private byte[] kept(int level, long place) {
        byte[] hash = read.computeIfAbsent(
                        new Tile(level, place / Frontier.TILE), tile -> kept.under(tile.level(), tile.place()))
                .get(place);
        if (hash == null) {
            throw new Cut();
        }
        return hash;
    }

    private static <T> Optional<T> unlessCut(Supplier<T> answer) {
        try {
            return Optional.of(answer.get());
        } catch (Cut cut) {
            return Optional.empty();
        }
    }

    /** A hash that is needed is not kept. */
    private static final class Cut extends RuntimeException {
        private static final long serialVersionUID = 1;

        Cut() {
            super("not kept", null, false, false);
        }
    }
}
