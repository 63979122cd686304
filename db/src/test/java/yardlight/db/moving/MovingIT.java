package yardlight.db.moving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import yardlight.db.TestDatabase;
import yardlight.db.journal.Journal;
import yardlight.db.journal.Writing;
import yardlight.escalation.Entry;

/** Everything moves, from each database into each. */
class MovingIT {

    private static final int SEED = 8;

    @TempDir
    private Path folder;

    static Stream<Arguments> ways() {
        return Stream.of(TestDatabase.values())
                .flatMap(from -> Stream.of(TestDatabase.values()).map(to -> Arguments.of(from, to)));
    }

    static Stream<Arguments> between() {
        return ways().filter(way -> way.get()[0] != way.get()[1]);
    }

    @ParameterizedTest
    @MethodSource("ways")
    void every_row_of_every_table_arrives_exactly_as_it_was(TestDatabase from, TestDatabase to) throws SQLException {
        Ground old = Ground.filled(from, SEED);
        Map<String, List<String>> before = Everything.in(old.source());
        assertThat(before)
                .allSatisfy((table, rows) -> assertThat(rows).as(table).isNotEmpty());
        Path file = folder.resolve("crate.zip");

        Crate crate = old.moveOut(file);
        Ground fresh = Ground.empty(to);
        MoveIn move = fresh.moveIn(file);
        assertThat(move.look()).isEqualTo(MoveIn.Finding.TO_BE_DONE);
        move.in(RandomNight.BEGAN);

        Map<String, List<String>> after = Everything.in(fresh.source());
        before.forEach((table, rows) -> assertThat(after.get(table)).as(table).containsExactlyElementsOf(rows));
        assertThat(Everything.in(old.source())).isEqualTo(before);
        assertThat(crate.rows())
                .isEqualTo(before.values().stream().mapToLong(List::size).sum());
        assertThat(crate.head().size()).isEqualTo(RandomNight.LINES);
    }

    /** H2 may have kept such texts; PostgreSQL does not, and says in the log what it made of them. */
    @ParameterizedTest
    @EnumSource
    void a_text_with_u_0000_arrives_as_it_was_or_with_a_line_about_what_it_became(TestDatabase to) throws SQLException {
        Ground old = Ground.filled(TestDatabase.H2, SEED);
        old.jdbc().update("update incoming_text set channel = 'nul', words = ? where id like '3:%'", "a\0b\0 \\u0000");
        Path file = folder.resolve("crate.zip");
        old.moveOut(file);
        Ground fresh = Ground.empty(to);

        Entry line = fresh.moveIn(file).in(RandomNight.BEGAN);

        boolean keeps = to == TestDatabase.H2;
        assertThat(fresh.jdbc().queryForObject("select words from incoming_text where channel = 'nul'", String.class))
                .isEqualTo(keeps ? "a\0b\0 \\u0000" : "a\ufffdb\ufffd \\u0000");
        assertThat(line.words().endsWith("; texts in which U+0000 became U+FFFD: 1"))
                .isEqualTo(!keeps);
    }

    /** What was written by the one is the beginning of what the other writes, and that can move on. */
    @ParameterizedTest
    @MethodSource("between")
    void the_log_has_a_line_about_it_and_goes_on_and_can_move_again(TestDatabase from, TestDatabase to)
            throws SQLException {
        Path file = folder.resolve("first.zip");
        Crate first = Ground.filled(from, SEED).moveOut(file);
        Ground fresh = Ground.empty(to);

        Entry line = fresh.moveIn(file).in(RandomNight.BEGAN);
        RandomNight.log(fresh.source(), 300);
        Crate second = fresh.moveOut(folder.resolve("second.zip"));

        assertThat(line.words())
                .startsWith("moved here by first.zip, made at 2026-11-25T08:13:00.123456Z of a database of " + from)
                .contains(
                        first.rows() + " rows",
                        "the log to line 600",
                        first.head().root());
        assertThat(fresh.jdbc().queryForObject("select words from log_line where line = 601", String.class))
                .isEqualTo(line.words());
        assertThat(second.head().size()).isEqualTo(RandomNight.LINES + 1 + 300);
        assertThat(second.head().publicKey()).isEqualTo(first.head().publicKey());
        assertThat(second.database().name()).isEqualTo(to.name());
    }

    /** Or the line about it, stored a moment ago, looks as if somebody had been there to hear the boxes. */
    @ParameterizedTest
    @EnumSource
    void boxes_are_heard_from_its_arrival_on(TestDatabase to) throws SQLException {
        Path file = folder.resolve("crate.zip");
        Ground.filled(TestDatabase.H2, SEED).moveOut(file);
        Ground fresh = Ground.empty(to);

        fresh.moveIn(file).in(RandomNight.BEGAN);

        try (var journal = new Journal(fresh.source());
                Writing writing = journal.begin()) {
            assertThat(writing.heardFrom()).isEqualTo(writing.lastAt()).isPresent();
        }
    }

    /** Lines that were let go after their time leave the hashes of their tiles. */
    @ParameterizedTest
    @MethodSource("between")
    void a_log_whose_oldest_lines_are_gone_moves_too(TestDatabase from, TestDatabase to) throws SQLException {
        Ground old = Ground.filled(from, SEED);
        old.jdbc().update("delete from log_line where line <= 512");
        Path file = folder.resolve("crate.zip");
        old.moveOut(file);
        Ground fresh = Ground.empty(to);

        fresh.moveIn(file).in(RandomNight.BEGAN);

        assertThat(fresh.jdbc().queryForObject("select count(*) from log_line", Integer.class))
                .isEqualTo(RandomNight.LINES - 512 + 1);
    }

    @Test
    void a_second_time_it_is_found_to_be_done_and_another_one_is_refused() throws SQLException {
        Path file = folder.resolve("crate.zip");
        Path other = folder.resolve("other.zip");
        Ground.filled(TestDatabase.H2, SEED).moveOut(file);
        Ground another = Ground.filled(TestDatabase.H2, SEED);
        RandomNight.log(another.source(), 10);
        another.moveOut(other);
        Ground fresh = Ground.empty(TestDatabase.H2);
        fresh.moveIn(file).in(RandomNight.BEGAN);
        RandomNight.log(fresh.source(), 100);

        assertThat(fresh.moveIn(file).look()).isEqualTo(MoveIn.Finding.DONE);
        assertThatThrownBy(() -> fresh.moveIn(file).in(RandomNight.BEGAN)).isInstanceOf(MoveRefused.class);
        assertThatThrownBy(() -> fresh.moveIn(other).look())
                .isInstanceOf(MoveRefused.class)
                .hasMessageContaining("there is something in the database already");
        fresh.jdbc().update("delete from log_line where line < 620");
        assertThat(fresh.moveIn(file).look()).isEqualTo(MoveIn.Finding.DONE);
    }

    @Test
    void a_file_that_is_gone_is_only_needed_where_nothing_is() {
        Path gone = folder.resolve("gone.zip");
        Ground filled = Ground.empty(TestDatabase.H2);
        RandomNight.log(filled.source(), 1);

        assertThat(filled.moveIn(gone).look()).isEqualTo(MoveIn.Finding.GONE);
        assertThatThrownBy(() -> Ground.empty(TestDatabase.H2).moveIn(gone).look())
                .isInstanceOf(MoveRefused.class)
                .hasMessage("it is not there");
    }

    /** It may lie about for years, and a gateway that was moved must start as long as its database is sound. */
    @Test
    void a_file_that_cannot_be_read_is_only_needed_where_nothing_is() throws SQLException, IOException {
        Path file = folder.resolve("crate.zip");
        Ground.filled(TestDatabase.H2, SEED).moveOut(file);
        Ground filled = Ground.empty(TestDatabase.H2);
        filled.moveIn(file).in(RandomNight.BEGAN);
        Path later = new Tampered(file)
                .list(list -> list.replace("crate 1", "crate 2"))
                .as(folder.resolve("later.zip"));
        byte[] bytes = Files.readAllBytes(file);
        Path cut = Files.write(folder.resolve("cut.zip"), Arrays.copyOf(bytes, bytes.length / 2));

        for (Path left : List.of(later, cut, Files.createDirectory(folder.resolve("folder")))) {
            assertThat(filled.moveIn(left).look()).isEqualTo(MoveIn.Finding.UNREADABLE);
            assertThatThrownBy(() -> Ground.empty(TestDatabase.H2).moveIn(left).look())
                    .isInstanceOf(MoveRefused.class);
        }
    }

    /** Its own lines may all be later ones, and it stems from nothing. */
    @Test
    void a_database_whose_oldest_lines_are_gone_is_not_taken_for_that_of_another_gateway_s_crate() throws SQLException {
        Path file = folder.resolve("crate.zip");
        Ground.filled(TestDatabase.H2, SEED).moveOut(file);
        Ground other = Ground.filled(TestDatabase.H2, SEED);
        RandomNight.log(other.source(), 100);
        other.jdbc().update("delete from log_line where line < 620");

        assertThatThrownBy(() -> other.moveIn(file).look())
                .isInstanceOf(MoveRefused.class)
                .hasMessageContaining("there is something in the database already");
    }

    @Test
    void the_database_that_it_was_made_of_does_not_take_it() throws SQLException {
        Path file = folder.resolve("crate.zip");
        Ground old = Ground.filled(TestDatabase.H2, SEED);
        old.moveOut(file);

        assertThatThrownBy(() -> old.moveIn(file).look())
                .isInstanceOf(MoveRefused.class)
                .hasMessage(
                        "there is something in the database already, if only of one start, in lane; a new one is needed");
    }

    @Test
    void the_file_is_its_owner_s_alone_and_never_there_by_halves() throws SQLException, IOException {
        Path file = folder.resolve("crate.zip");
        Files.writeString(folder.resolve("crate.zip.half"), "what a crash left");
        Ground.filled(TestDatabase.H2, SEED).moveOut(file);

        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(file);
        }
    }

    @Test
    void a_file_that_is_there_is_not_written_over() throws SQLException, IOException {
        Path file = Files.writeString(folder.resolve("crate.zip"), "something");
        Ground old = Ground.filled(TestDatabase.H2, SEED);

        assertThatThrownBy(() -> old.moveOut(file))
                .isInstanceOf(MoveRefused.class)
                .hasMessageContaining("a file of that name");
        assertThat(file).hasContent("something");
    }

    @ParameterizedTest
    @EnumSource
    void nothing_moves_out_of_a_database_with_nothing_in_it(TestDatabase database) {
        assertThatThrownBy(() -> Ground.empty(database).moveOut(folder.resolve("crate.zip")))
                .isInstanceOf(MoveRefused.class)
                .hasMessageContaining("there is nothing in this database");
        assertThat(folder).isEmptyDirectory();
    }

    @ParameterizedTest
    @EnumSource
    void nothing_moves_out_while_another_gateway_has_the_database_open(TestDatabase database) throws SQLException {
        Ground old = Ground.filled(database, SEED);

        try (Connection another = old.source().getConnection()) {
            assertThat(another.isValid(1)).isTrue();
            assertThatThrownBy(() -> old.moveOut(folder.resolve("crate.zip")))
                    .isInstanceOf(MoveRefused.class)
                    .hasMessageContaining("another gateway has the database open");
        }
        assertThat(folder).isEmptyDirectory();
        assertThat(old.moveOut(folder.resolve("crate.zip")).rows()).isPositive();
    }

    @ParameterizedTest
    @EnumSource
    void nothing_moves_out_of_tables_of_another_release(TestDatabase database) throws SQLException {
        Ground old = Ground.filled(database, SEED);
        old.jdbc()
                .update(
                        "delete from \"flyway_schema_history\" where \"version\" = ?",
                        String.valueOf(SchemaVersion.newestCommon()));

        assertThatThrownBy(() -> old.moveOut(folder.resolve("crate.zip")))
                .isInstanceOf(MoveRefused.class)
                .hasMessageContaining("the tables are not those of this release");
    }

    @ParameterizedTest
    @EnumSource
    void nothing_moves_out_whose_log_was_changed(TestDatabase database) throws SQLException {
        Ground old = Ground.filled(database, SEED);
        old.jdbc().update("update log_line set words = 'nothing to see here' where line = 300");

        assertThatThrownBy(() -> old.moveOut(folder.resolve("crate.zip")))
                .isInstanceOf(MoveRefused.class)
                .hasMessage("line 300 of the log is not what it was when it was written");
        assertThat(folder).isEmptyDirectory();
    }
}
