package yardlight.db.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.Stream;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;

class BackupsIT {

    private static final LocalDate DAY = LocalDate.parse("2026-11-25");

    @TempDir
    private Path folder;

    @Test
    void hold_what_was_committed_and_open_as_a_database() throws IOException {
        try (var source = TestDatabase.H2.migrated(TestDatabase.H2.newUrl())) {
            new JdbcTemplate(source).update("insert into secret values ('mark', 'here', current_timestamp)");

            Path backup =
                    new Backups(source).back(folder.resolve("backup"), DAY, 14).orElseThrow();

            try (HikariDataSource restored = TestDatabase.H2.migrated("jdbc:h2:file:" + unpack(backup))) {
                assertThat(new JdbcTemplate(restored).queryForObject("select count(*) from secret", Integer.class))
                        .isEqualTo(1);
            }
        }
    }

    @Test
    void are_kept_as_many_as_asked_for_the_oldest_go_first_and_strangers_stay() throws IOException {
        Files.createFile(folder.resolve("notes.txt"));
        try (var source = TestDatabase.H2.migrated(TestDatabase.H2.newUrl())) {
            var backups = new Backups(source);
            for (int day = 0; day < 4; day++) {
                backups.back(folder, DAY.plusDays(day), 2);
            }
        }

        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("notes.txt", "yardlight-2026-11-27.zip", "yardlight-2026-11-28.zip");
        }
    }

    @Test
    void are_left_to_postgresql_itself() {
        try (var source = TestDatabase.POSTGRESQL.migrated(TestDatabase.POSTGRESQL.newUrl())) {
            assertThat(new Backups(source).back(folder, DAY, 14)).isEmpty();
        }
    }

    @Test
    void cannot_be_kept_in_no_number() {
        try (var source = TestDatabase.H2.migrated(TestDatabase.H2.newUrl())) {
            assertThatThrownBy(() -> new Backups(source).back(folder, DAY, 0))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("backups to keep must be at least 1: 0");
        }
    }

    private Path unpack(Path zip) throws IOException {
        Path into = Files.createDirectory(folder.resolve("restored"));
        try (var in = new ZipInputStream(Files.newInputStream(zip))) {
            for (var entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                Files.copy(in, into.resolve(Path.of(entry.getName()).getFileName()));
            }
        }
        return into.resolve("yardlight");
    }
}
