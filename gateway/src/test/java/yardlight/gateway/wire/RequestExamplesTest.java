package yardlight.gateway.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The examples by which a box is asked to shut in, run in each language on this computer with a board stood in for. */
class RequestExamplesTest {

    private static final String BOX = "mesa-9-box";
    private static final String KEY = "the-key-of-mesa-9";
    private static final String RECEIVED = "2099-11-28T23:58:30.120Z";
    private static final String EXPIRES = "2099-11-29T00:03:30Z";
    private static final String OVER = "2020-01-01T00:00:00Z";

    @TempDir
    private Path folder;

    /** The languages, and how the line that stops nothing becomes one that does. */
    enum Language {
        SHELL("  false # stop the site here; true once it has stopped", "  echo stop >> stopped.txt"),
        MICRO_PYTHON(
                "    return False  # stop the site here; True once it has stopped",
                "    open('stopped.txt', 'a').write('stop\\n')\n    return True"),
        ARDUINO(
                "  return false;  // stop the site here; true once it has stopped",
                "  std::ofstream(\"stopped.txt\", std::ios::app) << \"stop\\n\";\n  return true;");

        private final String idle;
        private final String stopping;

        Language(String idle, String stopping) {
            this.idle = idle;
            this.stopping = stopping;
        }
    }

    private Examples example() {
        return Examples.all(new Examples.Wired("http://yard.example", BOX, KEY), Optional.empty())
                .get(2);
    }

    private void prepare(Language language, boolean stops) throws Exception {
        String text = switch (language) {
            case SHELL -> example().shell();
            case MICRO_PYTHON -> example().microPython();
            case ARDUINO -> example().arduino();
        };
        assertThat(text).contains(language.idle);
        String program = stops ? text.replace(language.idle, language.stopping) : text;
        switch (language) {
            case SHELL -> Boards.needs("openssl", "sed", "base64");
            case MICRO_PYTHON -> Boards.needs("python3");
            case ARDUINO -> Boards.needs("g++");
        }
        Files.writeString(folder.resolve("program"), program);
        if (language == Language.ARDUINO) {
            Boards.compile(folder, program);
        }
    }

    /** One round, in which a heartbeat is answered so; what was posted beside it. */
    private List<String> round(Language language, String answer) throws Exception {
        Files.writeString(folder.resolve("answer.json"), answer);
        Files.deleteIfExists(folder.resolve("posted.txt"));
        String program = Files.readString(folder.resolve("program"));
        switch (language) {
            case SHELL -> Boards.shell(folder, program);
            case MICRO_PYTHON -> assertThat(Boards.microPython(folder, program)).isEmpty();
            case ARDUINO -> assertThat(Boards.arduino(folder)).isEmpty();
        }
        List<String> posted = Files.readAllLines(folder.resolve("posted.txt"));
        assertThat(posted.get(0)).contains("http://yard.example/api/v1/heartbeats");
        return posted.subList(1, posted.size());
    }

    private long stops() throws Exception {
        Path stopped = folder.resolve("stopped.txt");
        return Files.exists(stopped) ? Files.readAllLines(stopped).size() : 0;
    }

    private static String asked(String id, String ask, String expires, String signature) {
        return "{\"received\":\"" + RECEIVED + "\",\"next\":\"PT1M\",\"requests\":[{\"id\":\"" + id + "\",\"ask\":\""
                + ask + "\",\"expires\":\"" + expires + "\",\"signature\":\"" + signature + "\"}]}";
    }

    private static String asked(String id, String ask, String expires) throws Exception {
        return asked(id, ask, expires, signature(id, ask, expires));
    }

    private static String signature(String id, String ask, String expires) throws Exception {
        byte[] secret = MessageDigest.getInstance("SHA-256").digest(KEY.getBytes(StandardCharsets.UTF_8));
        Mac mac = Mac.getInstance("HmacSHA256");
        mac.init(new SecretKeySpec(secret, "HmacSHA256"));
        String lines = String.join("\n", "yardlight-request", BOX, id, ask, expires);
        return Base64.getEncoder().encodeToString(mac.doFinal(lines.getBytes(StandardCharsets.UTF_8)));
    }

    @ParameterizedTest
    @EnumSource
    void stop_once_however_often_they_are_asked_and_say_so_each_time(Language language) throws Exception {
        prepare(language, true);
        String answer = asked("mesa-9.shut-in.1", "shut-in", EXPIRES);

        for (int i = 0; i < 3; i++) {
            List<String> said = round(language, answer);
            assertThat(said).hasSize(1);
            assertThat(said.get(0)).contains("/api/v1/events", "shut-in", "done", "active", "mesa-9.shut-in.1");
        }
        assertThat(stops()).isEqualTo(1);

        round(language, asked("mesa-9.shut-in.2", "shut-in", EXPIRES));
        assertThat(round(language, answer)).hasSizeLessThanOrEqualTo(1);
        assertThat(stops()).isEqualTo(2);
    }

    @ParameterizedTest
    @EnumSource
    void leave_alone_what_is_forged_or_late_or_something_else(Language language) throws Exception {
        prepare(language, true);

        assertThat(round(language, asked("a.1", "shut-in", EXPIRES, signature("a.2", "shut-in", EXPIRES))))
                .isEmpty();
        assertThat(round(language, asked("a.1", "shut-in", OVER))).isEmpty();
        assertThat(round(language, asked("a.1", "start", EXPIRES))).isEmpty();
        assertThat(round(language, "{\"received\":\"" + RECEIVED + "\",\"next\":\"PT1M\"}"))
                .isEmpty();
        assertThat(stops()).isZero();
    }

    @ParameterizedTest
    @EnumSource
    void say_that_nothing_was_stopped_as_long_as_nothing_is_written_in(Language language) throws Exception {
        prepare(language, false);

        List<String> said = round(language, asked("a.1", "shut-in", EXPIRES));

        assertThat(said).hasSize(1);
        assertThat(said.get(0)).contains("refused", "a.1").doesNotContain("done");
    }
}
