package yardlight.gateway.home;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.support.GenericApplicationContext;
import org.springframework.mock.env.MockEnvironment;
import yardlight.db.TestDatabase;

/** A start after a crash needs no hand: what a killed process leaves is no damage. */
class HomeCheckIT {

    /** What H2 writes before anything is committed. */
    private static final int HEADERS = 8_192;

    @TempDir
    private Path home;

    @Test
    void lets_a_file_pass_that_was_never_closed_and_leaves_every_byte() throws IOException {
        byte[] open = openFile();
        Files.write(file(), open);

        assertThatCode(this::check).doesNotThrowAnyException();
        assertThat(Files.readAllBytes(file())).isEqualTo(open);
    }

    @Test
    void lets_a_file_pass_that_a_first_start_left_empty() throws IOException {
        Files.createFile(file());

        assertThatCode(this::check).doesNotThrowAnyException();
    }

    @Test
    void lets_a_file_pass_that_a_first_start_had_just_begun() throws IOException {
        Files.write(file(), Arrays.copyOf(openFile(), HEADERS));

        assertThatCode(this::check).doesNotThrowAnyException();
        TestDatabase.H2.migrated(url()).close();
    }

    @Test
    void stops_at_a_file_of_zeros() throws IOException {
        Files.write(file(), new byte[HEADERS]);

        assertThatThrownBy(this::check).isInstanceOf(HomeTrouble.class).hasMessageContaining("is damaged");
    }

    /** As a process that was killed leaves it: copied while somebody has it open. */
    private static byte[] openFile() throws IOException {
        String url = TestDatabase.H2.newUrl();
        try (var source = TestDatabase.H2.migrated(url)) {
            assertThat(source.isRunning()).isTrue();
            return Files.readAllBytes(
                    Path.of(url.substring("jdbc:h2:file:".length()).split(";", 2)[0] + ".mv.db"));
        }
    }

    private void check() {
        var environment = new MockEnvironment().withProperty("spring.datasource.url", url());
        var context = new GenericApplicationContext();
        context.setEnvironment(environment);
        new HomeCheck().initialize(context);
    }

    private String url() {
        return "jdbc:h2:file:" + home.resolve("yardlight") + ";WRITE_DELAY=0";
    }

    private Path file() {
        return home.resolve("yardlight.mv.db");
    }
}
