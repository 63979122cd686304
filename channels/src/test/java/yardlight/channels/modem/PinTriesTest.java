package yardlight.channels.modem;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PinTriesTest {

    @TempDir
    Path home;

    private Path file;

    @BeforeEach
    void place() {
        file = home.resolve("modem-pin");
    }

    private PinTries startedAnew() {
        return new PinTries(Optional.of(file));
    }

    @Test
    void remember_a_pin_that_was_tried_through_a_restart() {
        startedAnew().trying("1234");

        assertThat(startedAnew().refused("1234")).isTrue();
        assertThat(startedAnew().refused("4321")).isFalse();
    }

    @Test
    void forget_it_once_the_card_is_open() {
        startedAnew().trying("1234");
        startedAnew().taken();

        assertThat(startedAnew().refused("1234")).isFalse();
        assertThat(file).doesNotExist();
    }

    @Test
    void write_no_pin_and_let_nobody_else_read() throws IOException {
        startedAnew().trying("1234");

        assertThat(Files.readString(file)).matches("[0-9a-f]{80}");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
    }

    @Test
    void try_nothing_when_the_file_cannot_be_understood() throws IOException {
        Files.writeString(file, "half");

        assertThat(startedAnew().refused("1234")).isTrue();
    }

    @Test
    void remember_without_a_file_too() {
        var tries = new PinTries(Optional.empty());

        tries.trying("1234");

        assertThat(tries.refused("1234")).isTrue();
        tries.taken();
        assertThat(tries.refused("1234")).isFalse();
    }
}
