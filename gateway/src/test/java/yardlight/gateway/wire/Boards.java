package yardlight.gateway.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Runs examples on this computer: one round of a program, with what a board has beside it stood in for. What was posted is in
 * {@code posted.txt} of the folder, a line for each post; a heartbeat is answered with {@code answer.json}.
 */
final class Boards {

    private static final Path STAND_INS = Path.of("src/test/resources/arduino").toAbsolutePath();

    /** What MicroPython has and Python has not. */
    private static final String UREQUESTS = """
        import json, time

        def stop(seconds):
            raise SystemExit
        time.sleep = stop

        class Answer:
            def __init__(self, text):
                self.status_code, self.text = 202, text
            def json(self):
                return json.loads(self.text)
            def close(self):
                pass

        def post(url, json=None, headers={}):
            import json as coding
            with open("posted.txt", "a") as posted:
                posted.write(url + " " + coding.dumps(json) + "\\n")
            return Answer(open("answer.json").read() if "/heartbeats" in url else "{}")
        """;

    private static final String CURL = """
        #!/bin/sh
        echo "$*" >> posted.txt
        case "$*" in */heartbeats*) cat answer.json ;; esac
        """;

    private Boards() {}

    static void needs(String... programs) {
        for (String program : programs) {
            assumeTrue(there(program), "NOT TRIED: no " + program + " here");
        }
    }

    /** Compiles a sketch into {@code sketch} of the folder, with every warning an error. */
    static void compile(Path folder, String sketch, String... more) throws Exception {
        Files.writeString(folder.resolve("sketch.cpp"), "#include \"Arduino.h\"\n" + sketch);
        var command = new ArrayList<>(List.of("g++", "-std=c++17", "-Wall", "-Wextra", "-Werror"));
        command.addAll(List.of(more));
        command.addAll(List.of(
                "-I",
                STAND_INS.toString(),
                "-o",
                "sketch",
                "sketch.cpp",
                STAND_INS.resolve("board.cpp").toString()));
        assertThat(run(folder, command)).isEmpty();
    }

    static String arduino(Path folder) throws Exception {
        return run(folder, List.of("./sketch"));
    }

    static String microPython(Path folder, String program) throws Exception {
        Files.writeString(folder.resolve("urequests.py"), UREQUESTS);
        Files.writeString(folder.resolve("main.py"), program);
        return run(folder, List.of("python3", "main.py"));
    }

    static String parsed(Path folder, String program) throws Exception {
        Files.writeString(folder.resolve("parsed.py"), program);
        return run(folder, List.of("python3", "-W", "error", "-m", "py_compile", "parsed.py"));
    }

    static String shell(Path folder, String script) throws Exception {
        Path curl = Files.writeString(folder.resolve("curl"), CURL);
        assertThat(curl.toFile().setExecutable(true)).isTrue();
        Files.writeString(folder.resolve("main.sh"), script);
        return run(folder, List.of("sh", "-c", "PATH=\"$PWD:$PATH\" sh main.sh"));
    }

    private static boolean there(String program) {
        return Stream.of(System.getenv("PATH").split(":"))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }

    private static String run(Path folder, List<String> command) throws IOException, InterruptedException {
        Path printed = folder.resolve("printed.txt");
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(printed.toFile())
                .start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS))
                .as(String.join(" ", command))
                .isTrue();
        return Files.readString(printed);
    }
}
