package yardlight.channels.oauth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TokenFileTest {

    @TempDir
    private Path folder;

    @Test
    void is_read_each_time() throws Exception {
        Path file = Files.writeString(folder.resolve("token"), "one\n");
        var tokens = new TokenFile(file);
        assertThat(tokens.token()).isEqualTo("one");

        Files.writeString(file, "two");

        assertThat(tokens.token()).isEqualTo("two");
    }

    @Test
    void says_what_is_wrong_without_what_is_in_it() throws Exception {
        Path file = Files.writeString(folder.resolve("token"), "two words");

        assertThatThrownBy(() -> new TokenFile(file).token())
                .isInstanceOf(NoToken.class)
                .hasMessageEndingWith("token does not hold one word of ASCII");
        assertThatThrownBy(() -> new TokenFile(folder.resolve("none")).token())
                .isInstanceOf(NoToken.class)
                .hasMessageEndingWith("none cannot be read");
    }
}
