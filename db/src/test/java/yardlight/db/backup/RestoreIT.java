package yardlight.db.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;

class RestoreIT {

    private static final LocalDate DAY = LocalDate.parse("2026-11-25");
    private static final String MARK = "insert into secret values ('%s', 'here', current_timestamp)";

    @TempDir
    private Path home;

    private Path backup;
    private Restore restore;

    /** A backup that has a first mark, and a database that has a second one as well. */
    @BeforeEach
    void back_up() {
        try (var source = TestDatabase.H2.migrated(url())) {
            var jdbc = new JdbcTemplate(source);
            jdbc.update(MARK.formatted("first"));
            backup = new Backups(source).back(home.resolve("backup"), DAY, 14).orElseThrow();
            jdbc.update(MARK.formatted("second"));
        }
        restore = new Restore(home.resolve("yardlight"), "sa", "");
    }

    @Test
    void puts_the_backup_in_and_the_database_aside() throws IOException {
        byte[] before = bytes();

        Restored restored = restore.from(backup).orElseThrow();

        assertThat(marks()).isEqualTo(1);
        assertThat(restored.backup()).isEqualTo("yardlight-2026-11-25.zip");
        assertThat(restored.putAside()).isTrue();
        assertThat(Files.readAllBytes(home.resolve("yardlight.aside-1.mv.db"))).isEqualTo(before);
    }

    @Test
    void puts_the_backup_in_where_no_database_is() throws IOException {
        Files.delete(file());

        assertThat(restore.from(backup).orElseThrow().putAside()).isFalse();
        assertThat(marks()).isEqualTo(1);
    }

    @Test
    void does_not_do_it_again_when_the_property_is_left_in_place() {
        restore.from(backup);
        try (var source = TestDatabase.H2.migrated(url())) {
            new JdbcTemplate(source).update(MARK.formatted("third"));
        }

        assertThat(restore.from(backup)).isEmpty();
        assertThat(marks()).isEqualTo(2);
    }

    @Test
    void takes_another_name_for_each_database_that_is_put_aside() throws IOException {
        restore.from(backup);
        Files.write(backup, new byte[] {0}, java.nio.file.StandardOpenOption.APPEND);

        assertThat(restore.from(backup).map(Restored::aside)).contains("yardlight.aside-2.mv.db");
        assertThat(home.resolve("yardlight.aside-1.mv.db")).exists();
    }

    @Test
    void refuses_a_backup_with_one_bit_changed_and_touches_nothing() throws IOException {
        byte[] whole = Files.readAllBytes(backup);
        whole[whole.length / 2] ^= 1;
        Files.write(backup, whole);

        refuses("damaged");
    }

    @Test
    void refuses_a_backup_that_is_cut_off_and_touches_nothing() throws IOException {
        byte[] whole = Files.readAllBytes(backup);
        Files.write(backup, java.util.Arrays.copyOf(whole, whole.length / 2));

        refuses("damaged");
    }

    @Test
    void refuses_what_is_no_backup_and_touches_nothing() throws IOException {
        Files.writeString(backup, "a shopping list");

        refuses("no backup of Yardlight");
    }

    @Test
    void refuses_a_backup_that_is_not_there() throws IOException {
        Files.delete(backup);

        refuses("cannot be put in place");
    }

    @Test
    void refuses_a_backup_of_a_newer_release_and_touches_nothing() throws IOException {
        try (var source = TestDatabase.H2.migrated(TestDatabase.H2.newUrl())) {
            new JdbcTemplate(source)
                    .update(
                            "insert into \"flyway_schema_history\" select 999, '999', 'a newer one', \"type\", \"script\","
                                    + " \"checksum\", \"installed_by\", \"installed_on\", \"execution_time\", \"success\""
                                    + " from \"flyway_schema_history\" where \"version\" = '2'");
            backup = new Backups(source).back(home.resolve("newer"), DAY, 14).orElseThrow();
        }

        refuses("newer release");
    }

    @Test
    void refuses_while_somebody_has_the_database_open() throws IOException {
        try (var source = TestDatabase.H2.migrated(url())) {
            assertThatThrownBy(() -> restore.from(backup))
                    .isInstanceOf(RestoreRefused.class)
                    .hasMessageContaining("open");
            assertThat(new JdbcTemplate(source).queryForObject("select count(*) from secret", Integer.class))
                    .isEqualTo(2);
        }
    }

    @Test
    void ends_at_the_next_start_what_a_crash_broke_off_before_the_database_was_put_aside() throws IOException {
        restore.from(backup);
        Files.move(file(), home.resolve("restored/yardlight.mv.db"));
        Files.move(home.resolve("yardlight.aside-1.mv.db"), file());

        assertThat(restore.finish()).isPresent();
        assertThat(marks()).isEqualTo(1);
        assertThat(home.resolve("yardlight.aside-1.mv.db")).exists();
    }

    @Test
    void ends_at_the_next_start_what_a_crash_broke_off_after_the_database_was_put_aside() throws IOException {
        restore.from(backup);
        Files.move(file(), home.resolve("restored/yardlight.mv.db"));

        assertThat(restore.finish()).isPresent();
        assertThat(marks()).isEqualTo(1);
    }

    @Test
    void begins_anew_after_a_crash_in_the_middle_of_unpacking() throws IOException {
        Files.createDirectories(home.resolve("restoring"));
        Files.writeString(home.resolve("restoring/yardlight.mv.db"), "half of it");

        assertThat(restore.finish()).isEqualTo(Optional.empty());
        assertThat(marks()).isEqualTo(2);
        restore.from(backup);
        assertThat(marks()).isEqualTo(1);
    }

    private void refuses(String words) throws IOException {
        byte[] before = bytes();

        assertThatThrownBy(() -> restore.from(backup))
                .isInstanceOf(RestoreRefused.class)
                .hasMessageContaining(words);

        assertThat(bytes()).isEqualTo(before);
        assertThat(home.resolve("yardlight.aside-1.mv.db")).doesNotExist();
        assertThat(home.resolve("restoring")).doesNotExist();
    }

    private int marks() {
        try (var source = TestDatabase.H2.migrated(url())) {
            return new JdbcTemplate(source).queryForObject("select count(*) from secret", Integer.class);
        }
    }

    private byte[] bytes() throws IOException {
        return Files.readAllBytes(file());
    }

    private Path file() {
        return home.resolve("yardlight.mv.db");
    }

    private String url() {
        return "jdbc:h2:file:" + home.resolve("yardlight") + ";WRITE_DELAY=0";
    }
}
