package yardlight.gateway.home;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.gateway.YardlightApplication;

/** A gateway in a process of its own that must not start: what it says, how it ends, and what it leaves untouched. */
class RefusedStartIT {

    private static final int HEADERS = 8_192;

    @TempDir
    private Path home;

    private record Ended(int code, String words) {}

    /** Of a file with nothing whole but its headers H2 on its own makes a new and empty one. */
    @ParameterizedTest
    @ValueSource(ints = {0, HEADERS})
    void on_a_damaged_file_says_so_and_leaves_every_byte(int whole) throws Exception {
        Path file = home.resolve("yardlight.mv.db");
        database().close();
        byte[] damaged = Files.readAllBytes(file);
        Arrays.fill(damaged, whole, damaged.length, (byte) 'x');
        Files.write(file, damaged);

        Ended ended = start();

        assertThat(ended.words()).contains("The database file is damaged");
        assertThat(ended.code()).isEqualTo(1);
        assertThat(Files.readAllBytes(file)).isEqualTo(damaged);
    }

    @Test
    void on_tables_of_a_newer_release_says_so_and_leaves_every_byte() throws Exception {
        try (HikariDataSource source = database()) {
            new JdbcTemplate(source).update("""
                    insert into "flyway_schema_history"
                    select 999, '999', 'of tomorrow', "type", 'V999__of_tomorrow.sql', 1, "installed_by",
                        "installed_on", 1, true from "flyway_schema_history" where "version" = '1'
                    """);
        }

        Path file = home.resolve("yardlight.mv.db");
        byte[] before = Files.readAllBytes(file);

        Ended ended = start();

        assertThat(ended.words()).contains("The tables of the database are not those of this release");
        assertThat(ended.code()).isEqualTo(1);
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @Test
    void on_a_backup_that_is_damaged_says_so_and_leaves_the_database() throws Exception {
        database().close();
        Path file = home.resolve("yardlight.mv.db");
        byte[] before = Files.readAllBytes(file);
        Path backup = Files.writeString(home.resolve("backup.zip"), "half a backup");

        Ended ended = start("--yardlight.restore-from=" + backup);

        assertThat(ended.words()).contains("Nothing was restored, and nothing was changed");
        assertThat(ended.code()).isEqualTo(1);
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @Test
    void on_a_file_that_another_process_has_open_says_so() throws Exception {
        try (HikariDataSource open = database()) {
            Ended ended = start();

            assertThat(ended.words()).contains("Another program has the database open");
            assertThat(ended.code()).isEqualTo(1);
            assertThat(new JdbcTemplate(open).queryForObject("select count(*) from lane", Integer.class))
                    .isEqualTo(1);
        }
    }

    @Test
    void in_a_home_that_cannot_be_written_says_so() throws Exception {
        Path file = Files.writeString(home.resolve("not-a-folder"), "");

        Ended ended = start("--yardlight.home=" + file.resolve("home"));

        assertThat(ended.words()).contains("The database file cannot be written");
        assertThat(ended.code()).isEqualTo(1);
    }

    @Test
    void on_a_postgresql_that_is_not_there_says_so() throws Exception {
        Ended ended = start("--spring.datasource.url=jdbc:postgresql://127.0.0.1:" + closedPort() + "/yardlight");

        assertThat(ended.words()).contains("The database cannot be reached");
        assertThat(ended.code()).isEqualTo(1);
    }

    /** The embedded server asks for no password; a login that it does not know is refused with the same class of state. */
    @Test
    void on_a_postgresql_that_does_not_know_the_login_says_so() throws Exception {
        Ended ended = start(
                "--spring.datasource.url="
                        + TestDatabase.POSTGRESQL.newUrl().replaceFirst("user=postgres", "user=nobody"),
                "--spring.datasource.username=nobody");

        assertThat(ended.words()).contains("The database does not let the gateway in");
        assertThat(ended.code()).isEqualTo(1);
    }

    @Test
    void with_a_provider_that_cannot_be_used_says_why() throws Exception {
        Ended ended = start("--yardlight.http.voice.url=http://voice.example/");

        assertThat(ended.words())
                .contains("yardlight.http.voice.url must be a whole https address", ": http://voice.example/")
                .contains("docs/channels.md");
        assertThat(ended.code()).isEqualTo(1);
    }

    @Test
    void with_a_contact_that_no_push_service_can_reach_says_why() throws Exception {
        Ended ended = start("--yardlight.push.contact=yard@ranch.example");

        assertThat(ended.words())
                .contains("yardlight.push.contact must begin with mailto: or https://: yard@ranch.example");
        assertThat(ended.code()).isEqualTo(1);
    }

    @Test
    void with_a_gateway_that_is_to_watch_and_no_key_for_it_says_so() throws Exception {
        Ended ended = start("--yardlight.watched-by.url=https://yard.example");

        assertThat(ended.words())
                .contains("yardlight.watched-by.key must be set, or key-file, beside url: https://yard.example")
                .contains("docs/operating.md");
        assertThat(ended.code()).isEqualTo(1);
    }

    private HikariDataSource database() {
        return TestDatabase.H2.migrated(url());
    }

    private String url() {
        return "jdbc:h2:file:" + home.resolve("yardlight") + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE";
    }

    private static int closedPort() throws IOException {
        try (var socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    private Ended start(String... arguments) throws Exception {
        var command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Dyardlight.home=" + home,
                "-cp",
                System.getProperty("java.class.path"),
                YardlightApplication.class.getName(),
                "--server.port=0"));
        command.addAll(List.of(arguments));
        Path words = home.resolve("words");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(words.toFile())
                .start();
        try {
            assertThat(process.waitFor(60, TimeUnit.SECONDS))
                    .as("it ends by itself")
                    .isTrue();
            return new Ended(process.exitValue(), Files.readString(words, StandardCharsets.UTF_8));
        } finally {
            process.destroyForcibly();
        }
    }
}
