package yardlight.db.moving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import yardlight.db.TestDatabase;
import yardlight.db.columns.LogColumns;
import yardlight.db.evidence.HeadKey;
import yardlight.db.tree.CanonicalLine;
import yardlight.db.tree.Frontier;
import yardlight.db.tree.Hashing;

/** A crate that is damaged, or that somebody changed and made fit again, is refused, and leaves nothing in the database. */
class TamperedCrateIT {

    private static final int ROUNDS = 60;
    private static final String TOLD = "told nobody";

    @TempDir
    static Path folder;

    private static Path whole;

    @BeforeAll
    static void pack() throws SQLException {
        whole = folder.resolve("whole.zip");
        Ground.filled(TestDatabase.H2, 26).moveOut(whole);
    }

    private static Tampered tampered() {
        try {
            return new Tampered(whole);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A cut or a bit: refused, or, where no reader looks, of no account. */
    @Test
    void damage_anywhere_is_found_before_the_database_is_touched() throws Exception {
        byte[] bytes = Files.readAllBytes(whole);
        var random = new Random(11);
        Ground fresh = Ground.empty(TestDatabase.H2);
        int refused = 0;
        for (int round = 0; round < ROUNDS; round++) {
            byte[] damaged = bytes.clone();
            int at = random.nextInt(bytes.length);
            if (round % 2 == 0) {
                damaged = Arrays.copyOf(damaged, at);
            } else {
                damaged[at] ^= (byte) (1 << random.nextInt(8));
            }
            Path file = Files.write(folder.resolve("damaged.zip"), damaged);
            try {
                assertThat(fresh.moveIn(file).look()).isEqualTo(MoveIn.Finding.TO_BE_DONE);
                assertThat(round % 2).as("a file that was cut at " + at).isOne();
            } catch (MoveRefused e) {
                refused++;
            }
        }
        System.out.println("damaged crates refused: " + refused + " of " + ROUNDS);
        assertThat(refused).isGreaterThan(ROUNDS * 9 / 10);
        assertThat(fresh.isEmpty()).isTrue();
    }

    static Stream<Arguments> unfit() {
        return Stream.of(
                because("a newer release made it: its tables", crate -> crate.list(to("schema \\d+", "schema 9999"))),
                because("an older release made it: its tables", crate -> crate.list(to("schema \\d+", "schema 1"))),
                because("its tables are not those", crate -> crate.list(to("part desk .*\n", ""))),
                because("its tables are not those", crate -> crate.list(to("part desk ", "part desks "))),
                because("damaged: desk: it is not there", crate -> crate.without("desk")),
                because(
                        "damaged: desk: it has 25 rows and should have 24",
                        crate -> crate.list(to("desk 25", "desk 24"))),
                because("no crate of Yardlight", crate -> crate.list(list -> list.replace("crate 1", "crate 2"))),
                because("what it says of itself", crate -> crate.list(list -> list + "\n")));
    }

    @ParameterizedTest
    @MethodSource("unfit")
    void what_does_not_fit_this_release_is_found_before_the_database_is_touched(
            String why, UnaryOperator<Tampered> change) throws Exception {
        Path file = change.apply(tampered()).as(folder.resolve("unfit.zip"));
        Ground fresh = Ground.empty(TestDatabase.H2);

        assertThatThrownBy(() -> fresh.moveIn(file).look())
                .isInstanceOf(MoveRefused.class)
                .hasMessageContaining(why);
    }

    static Stream<Arguments> changed() {
        return Stream.of(
                because(
                        "the columns of desk are not those",
                        crate -> crate.change("desk", to("contact:text", "who:text"))),
                because("row 1 of desk cannot be read: cells", crate -> crate.change("desk", to("\n[^\t]*\t", "\n"))),
                because(
                        "row 1 of event cannot be read: number: ",
                        crate -> crate.change("event", to("\n0\t", "\nnought\t"))),
                because(
                        "what is in person is not taken",
                        crate -> crate.change("person", to("(?d)\n(.*)\n", "\n$1\n$1\n"))),
                because("line 300 of the log is not what it was", crate -> crate.change("log_line", words(300, false))),
                because("tile 1 of level 1 of the log's tree is not that of its lines", crate -> lie(crate, 1)),
                because("the tree of the log is not the one that the writer had", crate -> lie(crate, 2)),
                because("the log in it is not the one whose head was signed", crate -> lie(crate, 3)),
                because("the signature of its head is not valid", crate -> lie(crate, 4)),
                because("line 300 of the log is missing", crate -> crate.change("log_line", to("(?d)\n300\t.*", ""))),
                because("line 600 of the log is missing", crate -> crate.change("log_line", to("(?d)\n600\t.*", ""))),
                because("is not valid", crate -> crate.list(to("(\"signature\":\")[0-9a-f]{4}", "$10000"))),
                because("is not signed by the key that is in it", crate -> crate.change("secret", another())));
    }

    @ParameterizedTest
    @MethodSource("changed")
    void what_was_changed_and_made_fit_is_refused_and_leaves_nothing(String why, UnaryOperator<Tampered> change)
            throws Exception {
        Path file = change.apply(tampered()).as(folder.resolve("changed.zip"));
        for (TestDatabase database : TestDatabase.values()) {
            Ground fresh = Ground.empty(database);

            assertThat(fresh.moveIn(file).look()).isEqualTo(MoveIn.Finding.TO_BE_DONE);
            assertThatThrownBy(() -> fresh.moveIn(file).in(RandomNight.BEGAN))
                    .isInstanceOf(MoveRefused.class)
                    .hasMessageContaining(why);

            assertThat(fresh.isEmpty()).isTrue();
        }
    }

    @ParameterizedTest
    @EnumSource
    void after_a_refusal_the_right_one_can_be_moved_in(TestDatabase database) throws Exception {
        Ground fresh = Ground.empty(database);
        Path wrong = lie(tampered(), 3).as(folder.resolve("wrong.zip"));
        assertThatThrownBy(() -> fresh.moveIn(wrong).in(RandomNight.BEGAN)).isInstanceOf(MoveRefused.class);

        fresh.moveIn(whole).in(RandomNight.BEGAN);

        assertThat(fresh.jdbc().queryForObject("select count(*) from log_line", Integer.class))
                .isEqualTo(RandomNight.LINES + 1);
    }

    private static Arguments because(String why, UnaryOperator<Tampered> change) {
        return Arguments.of(why, change);
    }

    private static UnaryOperator<String> to(String pattern, String replacement) {
        return text -> text.replaceFirst(pattern, replacement);
    }

    private static UnaryOperator<String> another() {
        byte[] key = HeadKey.fresh();
        return to("\nlog-heads\t[^\t]+", "\nlog-heads\t" + Base64.getEncoder().encodeToString(key));
    }

    /** Other words for a line, and its hash made right again if that is wanted. */
    private static UnaryOperator<String> words(long number, boolean hashed) {
        return text -> text.lines()
                .map(line -> line.startsWith(number + "\t") ? changed(line, hashed) : line)
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private static String changed(String line, boolean hashed) {
        String[] cells = line.split("\t", -1);
        cells[6] = TOLD;
        if (hashed) {
            cells[7] = HexFormat.of().formatHex(leaf(cells));
        }
        return String.join("\t", cells);
    }

    private static byte[] leaf(String... cells) {
        return new Hashing()
                .leaf(CanonicalLine.of(
                        Long.parseLong(cells[0]),
                        Instant.parse(cells[1]),
                        cells[2],
                        LogColumns.about(cells[5]),
                        Escaped.read(cells[6])));
    }

    /**
     * Somebody who changes line 300 and goes on to the end: its hash, that of the tile (from 2 on), the edge of the tree
     * (3), and the root in the head that the crate shows (4). They have the key, and could sign that as well: then it is
     * only a head that left the house which tells.
     */
    private static Tampered lie(Tampered crate, int far) {
        crate.change("log_line", words(300, true));
        var tree = new Frontier();
        var tiles = new StringBuilder();
        for (String line : crate.part("log_line").lines().skip(1).toList()) {
            tree.add(
                    HexFormat.of().parseHex(line.split("\t", -1)[7]),
                    (level, place, hash) -> tiles.append(
                            level + "\t" + place + "\t" + HexFormat.of().formatHex(hash) + "\n"));
        }
        List<Consumer<Tampered>> steps = List.of(
                one -> one.change("log_tile", text -> text.lines().findFirst().orElseThrow() + "\n" + tiles),
                one -> one.change("lane", text -> edge(text, tree)),
                one -> one.list(to(
                        "\"root\":\"[0-9a-f]+", "\"root\":\"" + HexFormat.of().formatHex(tree.root()))));
        steps.subList(0, far - 1).forEach(step -> step.accept(crate));
        return crate;
    }

    private static String edge(String lane, Frontier tree) {
        String[] lines = lane.split("\n");
        int column = List.of(lines[0].split("\t")).indexOf("log_edge:bytes");
        String[] cells = lines[1].split("\t", -1);
        cells[column] = HexFormat.of().formatHex(tree.bytes());
        return lines[0] + "\n" + String.join("\t", cells) + "\n";
    }
}
