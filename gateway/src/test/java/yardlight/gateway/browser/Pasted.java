package yardlight.gateway.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** Runs what a page offers to paste, with the programs of this machine. */
final class Pasted {

    /** What a board has and a computer has not: here it posts for real, once. */
    private static final String UREQUESTS = """
        import json, time, urllib.request, urllib.error

        def stop(seconds):
            raise SystemExit
        time.sleep = stop

        class Answer:
            def __init__(self, code, text):
                self.status_code, self.text = code, text
            def close(self):
                pass

        def post(url, json=None, headers={}):
            import json as coding
            asked = urllib.request.Request(url, coding.dumps(json).encode(), dict(headers, **{"Content-Type": "application/json"}))
            try:
                with urllib.request.urlopen(asked) as answer:
                    return Answer(answer.status, answer.read().decode())
            except urllib.error.HTTPError as refused:
                return Answer(refused.code, refused.read().decode())
        """;

    private Pasted() {}

    /** What it printed, and the errors. */
    static String sh(String script) {
        assumeTrue(has("curl"), "NOT TRIED: no curl here");
        return run(List.of("sh", "-c", script), Path.of("."));
    }

    /** What it printed after its first post. */
    static String microPython(String script) {
        assumeTrue(has("python3"), "NOT TRIED: no python3 here");
        try {
            Path folder = Files.createTempDirectory(Path.of("target"), "board");
            Files.writeString(folder.resolve("urequests.py"), UREQUESTS);
            Files.writeString(folder.resolve("main.py"), script);
            return run(List.of("python3", "main.py"), folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean has(String program) {
        return Stream.of(System.getenv("PATH").split(":"))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }

    private static String run(List<String> command, Path folder) {
        try {
            Path printed = Files.createTempFile(Path.of("target"), "printed", ".txt");
            Process process = new ProcessBuilder(command)
                    .directory(folder.toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(printed.toFile())
                    .start();
            assertThat(process.waitFor(30, TimeUnit.SECONDS))
                    .as(String.join(" ", command))
                    .isTrue();
            return Files.readString(printed);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
