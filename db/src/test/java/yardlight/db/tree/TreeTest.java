package yardlight.db.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The tree against the published vectors, and its proofs against the published ways to check them. */
class TreeTest {

    /** The leaves of the certificate-transparency reference tests for RFC 6962. */
    private static final List<String> LEAVES =
            List.of("", "00", "10", "2021", "3031", "40414243", "5051525354555657", "606162636465666768696a6b6c6d6e6f");

    private final Hashing hashing = new Hashing();

    /** Leaves in memory, and the tiles that a frontier told of. */
    private static final class Grown {
        final Frontier frontier = new Frontier();
        final List<byte[]> leaves = new ArrayList<>();
        final Map<String, byte[]> tiles = new HashMap<>();
        int reads;

        Grown(long size) {
            var hashing = new Hashing();
            for (long i = 0; i < size; i++) {
                add(hashing.leaf(("leaf " + i).getBytes(StandardCharsets.UTF_8)));
            }
        }

        void add(byte[] leaf) {
            leaves.add(leaf);
            frontier.add(leaf, (level, place, hash) -> tiles.put(level + "/" + place, hash));
        }

        Tree tree() {
            return new Tree((level, place) -> {
                reads++;
                var found = new HashMap<Long, byte[]>();
                for (long i = place * Frontier.TILE; i < (place + 1) * Frontier.TILE; i++) {
                    byte[] hash =
                            level == 0 ? i < leaves.size() ? leaves.get((int) i) : null : tiles.get(level + "/" + i);
                    if (hash != null) {
                        found.put(i, hash);
                    }
                }
                return found;
            });
        }
    }

    /** Certificate-transparency reference tests for RFC 6962, 2.1; recomputed. */
    @ParameterizedTest
    @CsvSource({
        "0, e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
        "1, 6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
        "2, fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
        "3, aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77",
        "4, d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
        "5, 4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4",
        "6, 76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef",
        "7, ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c",
        "8, 5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328"
    })
    void has_the_published_roots(int size, String root) {
        Grown grown = published(size);

        assertThat(hex(grown.frontier.root())).isEqualTo(root);
        assertThat(grown.tree().root(size).map(TreeTest::hex)).hasValue(root);
        assertThat(hex(PlainTree.root(grown.leaves))).isEqualTo(root);
    }

    /** RFC 6962, 2.1.1, over the leaves of the reference tests; recomputed. */
    @Test
    void has_the_published_paths() {
        assertThat(hex(published(8).tree().inclusion(5, 8).orElseThrow()))
                .containsExactly(
                        "bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b",
                        "ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0",
                        "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7");
        assertThat(hex(published(3).tree().inclusion(2, 3).orElseThrow()))
                .containsExactly("fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125");
    }

    /** RFC 6962, 2.1.2, over the leaves of the reference tests; recomputed. */
    @Test
    void has_the_published_consistency_proofs() {
        assertThat(hex(published(8).tree().consistency(6, 8).orElseThrow()))
                .containsExactly(
                        "0ebc5d3437fbe2db158b9f126a1d118e308181031d0a949f8dededebc558ef6a",
                        "ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0",
                        "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7");
        assertThat(hex(published(5).tree().consistency(2, 5).orElseThrow()))
                .containsExactly(
                        "5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e",
                        "bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b");
    }

    /** The same reference tests; recomputed. */
    @Test
    void hashes_leaves_and_nodes_as_published() {
        assertThat(hex(hashing.leaf("L123456".getBytes(StandardCharsets.US_ASCII))))
                .isEqualTo("395aa064aa4c29f7010acfe3f25db9485bbd4b91897b6ad7ad547639252b4d56");
        assertThat(hex(hashing.node(
                        "N123".getBytes(StandardCharsets.US_ASCII), "N456".getBytes(StandardCharsets.US_ASCII))))
                .isEqualTo("aa217fe888e47007fa15edab33c2b492a722cb106c64667fc2b044444de66bbb");
    }

    @Test
    void proves_every_leaf_of_every_small_tree_and_every_beginning_of_it() {
        Grown grown = new Grown(40);
        for (int size = 1; size <= 40; size++) {
            byte[] root = PlainTree.root(grown.leaves.subList(0, size));
            for (int leaf = 0; leaf < size; leaf++) {
                List<byte[]> path = grown.tree().inclusion(leaf, size).orElseThrow();
                assertThat(PlainTree.included(grown.leaves.get(leaf), leaf, size, path, root))
                        .isTrue();
            }
            for (int first = 1; first <= size; first++) {
                byte[] before = PlainTree.root(grown.leaves.subList(0, first));
                List<byte[]> proof = grown.tree().consistency(first, size).orElseThrow();
                assertThat(PlainTree.consistent(first, size, before, root, proof))
                        .isTrue();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {255, 256, 257, 511, 512, 1000, 65_536, 65_537, 70_000})
    void proves_leaves_of_larger_trees_by_their_tiles(int size) {
        Grown grown = new Grown(size);
        byte[] root = PlainTree.root(grown.leaves);
        assertThat(grown.frontier.root()).isEqualTo(root);
        var random = new Random(size);
        for (int i = 0; i < 20; i++) {
            int leaf = random.nextInt(size);
            int first = 1 + random.nextInt(size);
            grown.reads = 0;
            List<byte[]> path = grown.tree().inclusion(leaf, size).orElseThrow();
            assertThat(grown.reads).isLessThanOrEqualTo(7);
            assertThat(PlainTree.included(grown.leaves.get(leaf), leaf, size, path, root))
                    .isTrue();
            byte[] before = PlainTree.root(grown.leaves.subList(0, first));
            List<byte[]> proof = grown.tree().consistency(first, size).orElseThrow();
            assertThat(PlainTree.consistent(first, size, before, root, proof)).isTrue();
        }
    }

    @Test
    void goes_on_from_an_edge_that_was_kept() {
        Grown whole = new Grown(700);
        var kept = new Frontier(0, new byte[0]);
        for (byte[] leaf : whole.leaves) {
            kept = new Frontier(kept.size(), kept.bytes());
            kept.add(leaf, (level, place, hash) -> {});
        }

        assertThat(kept.root()).isEqualTo(whole.frontier.root());
        assertThatThrownBy(() -> new Frontier(3, new byte[32])).hasMessageContaining("2 hashes, not 32 bytes");
    }

    /** Old leaves go by the tile, and what is left can be shown without them. */
    @Test
    void proves_what_is_left_when_whole_tiles_of_leaves_are_gone() {
        Grown grown = new Grown(1500);
        byte[] root = grown.frontier.root();
        List<byte[]> all = List.copyOf(grown.leaves);
        byte[] last = grown.leaves.get(1400);
        byte[] before = PlainTree.root(all.subList(0, 1100));
        for (int i = 0; i < 1024; i++) {
            grown.leaves.set(i, null);
        }

        assertThat(PlainTree.included(
                        last, 1400, 1500, grown.tree().inclusion(1400, 1500).orElseThrow(), root))
                .isTrue();
        assertThat(PlainTree.consistent(
                        1100,
                        1500,
                        before,
                        root,
                        grown.tree().consistency(1100, 1500).orElseThrow()))
                .isTrue();
        assertThat(grown.tree().inclusion(700, 1500)).isEmpty();
        assertThat(grown.tree().consistency(700, 1500)).isEmpty();
    }

    @Test
    void refuses_what_is_not_in_the_tree() {
        Tree tree = new Grown(8).tree();

        assertThatThrownBy(() -> tree.inclusion(8, 8)).hasMessage("leaf must be from 0 to 7: 8");
        assertThatThrownBy(() -> tree.consistency(0, 8)).hasMessage("first must be from 1 to 8: 0");
        assertThatThrownBy(() -> tree.consistency(9, 8)).hasMessage("first must be from 1 to 8: 9");
    }

    private Grown published(int size) {
        var grown = new Grown(0);
        LEAVES.subList(0, size)
                .forEach(leaf -> grown.add(hashing.leaf(HexFormat.of().parseHex(leaf))));
        return grown;
    }

    private static String hex(byte[] hash) {
        return HexFormat.of().formatHex(hash);
    }

    private static List<String> hex(List<byte[]> hashes) {
        return hashes.stream().map(TreeTest::hex).toList();
    }
}
