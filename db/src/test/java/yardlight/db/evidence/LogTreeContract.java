package yardlight.db.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.db.TestDatabase;
import yardlight.db.tree.Hashing;
import yardlight.db.tree.PlainTree;

/** The tree that the journal grows, on every database, against the plain definitions. */
abstract class LogTreeContract {

    private WrittenLog log;

    abstract TestDatabase database();

    @BeforeEach
    void open() {
        log = new WrittenLog(database());
    }

    @AfterEach
    void close() {
        log.close();
    }

    @Test
    void has_the_root_of_no_leaves_before_the_first_line() {
        LogHead head = log.tree.head();

        assertThat(head.size()).isZero();
        assertThat(head.last()).isZero();
        assertThat(head.root()).isEqualTo(new Hashing().empty());
    }

    @Test
    void makes_each_line_a_leaf_in_the_transaction_that_writes_it() {
        log.with(600, 7);

        LogHead head = log.tree.head();
        assertThat(List.of(head.first(), head.size(), head.last())).containsExactly(1L, 600L, 600L);
        assertThat(head.root()).isEqualTo(PlainTree.root(leaves()));
        assertThat(log.jdbc.queryForObject("select count(*) from log_tile", Integer.class))
                .isEqualTo(2);
    }

    @Test
    void proves_a_line_and_gives_it_as_it_was_hashed() {
        log.with(600, 50);
        LogHead head = log.tree.head();
        for (long line : List.of(1L, 255L, 256L, 257L, 600L)) {
            LogTree.Proof proof = log.tree.proof(line, head, head.size()).orElseThrow();

            byte[] leaf = new Hashing().leaf(proof.entry().getBytes(StandardCharsets.UTF_8));
            assertThat(proof.leaf()).isEqualTo(leaf);
            assertThat(proof.entry()).contains("\"line\":" + line + ",");
            assertThat(PlainTree.included(leaf, proof.index(), proof.size(), proof.path(), head.root()))
                    .isTrue();
        }
        assertThat(log.tree.proof(601, head, 600)).isEmpty();
        assertThat(log.tree.proof(0, head, 600)).isEmpty();
    }

    @Test
    void proves_a_line_in_the_log_as_it_was_before() {
        log.with(300, 50);
        LogHead before = log.tree.head();
        log.with(300, 50);

        LogTree.Proof proof = log.tree.proof(17, log.tree.head(), before.size()).orElseThrow();

        assertThat(PlainTree.included(proof.leaf(), 16, 300, proof.path(), before.root()))
                .isTrue();
        List<byte[]> consistent =
                log.tree.consistency(log.tree.head(), 300, 600).orElseThrow();
        assertThat(PlainTree.consistent(300, 600, before.root(), log.tree.head().root(), consistent))
                .isTrue();
    }

    /** What somebody changes in the table does not fit the tree any more. */
    @Test
    void shows_a_line_that_was_changed_in_the_database() {
        log.with(10, 5);
        log.jdbc.update("update log_line set words = 'nobody was told' where line = 4");

        LogTree.Proof proof = log.tree.proof(4, log.tree.head(), 10).orElseThrow();

        assertThat(proof.entry()).contains("nobody was told");
        assertThat(new Hashing().leaf(proof.entry().getBytes(StandardCharsets.UTF_8)))
                .isNotEqualTo(proof.leaf());
    }

    /** A log that is older than its tree: the next transaction adds what is there, from the last gap on. */
    @Test
    void takes_the_lines_that_were_there_before_the_tree_into_it() {
        log.with(1300, 100);
        byte[] root = log.tree.head().root();
        log.jdbc.update("update log_line set leaf = null");
        log.jdbc.update("delete from log_tile");
        log.jdbc.update("update lane set log_first = 0, log_size = 0, log_edge = null, turn = turn + 1");

        log.with(1, 1);

        assertThat(log.tree.head().size()).isEqualTo(1301);
        assertThat(log.tree.root(log.tree.head(), 1300)).hasValue(root);

        log.jdbc.update("delete from log_line where line = 40");
        log.jdbc.update("delete from log_tile");
        log.jdbc.update("update lane set log_first = 0, log_size = 0, log_edge = null, turn = turn + 1");
        log.with(1, 1);

        assertThat(log.tree.head().first()).isEqualTo(41);
        assertThat(log.tree.head().last()).isEqualTo(1302);
        assertThat(log.tree.head().root()).isEqualTo(PlainTree.root(leaves().subList(39, 1301)));
    }

    private List<byte[]> leaves() {
        return log.jdbc.query("select leaf from log_line order by line", (row, number) -> row.getBytes("leaf"));
    }
}
