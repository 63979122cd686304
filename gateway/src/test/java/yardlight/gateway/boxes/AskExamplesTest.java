package yardlight.gateway.boxes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The examples of docs/api.md by which a box looks at a request, run as they stand there. */
class AskExamplesTest {

    private static final String KEY = "the-key-of-mesa-9";
    private static final String ID = "mesa-9.shut-in.mx04qvuo";
    private static final String LONG = "2099-01-01T00:00:00Z";
    private static final String OVER = "2026-01-01T00:00:00Z";

    @TempDir
    private Path folder;

    @Test
    void with_openssl_do_what_is_signed_and_in_time_and_nothing_else() throws Exception {
        assumeTrue(there("openssl") && there("bash"), "SKIPPED: openssl and bash are not both here");

        assertThat(shell(LONG, signature("shut-in", LONG), "shut-in")).isEqualTo("shut in");
        assertThat(shell(OVER, signature("shut-in", OVER), "shut-in")).isEmpty();
        assertThat(shell(LONG, signature("shut-in", OVER), "shut-in")).isEmpty();
        assertThat(shell(LONG, signature("start", LONG), "start")).isEmpty();
    }

    @Test
    void with_micropython_or_python_do_it_once() throws Exception {
        Optional<String> python = Stream.of("micropython", "python3")
                .filter(AskExamplesTest::there)
                .findFirst();
        assumeTrue(python.isPresent(), "SKIPPED: neither micropython nor python3 is here");
        String asked = "{'id': '%s', 'ask': 'shut-in', 'expires': '%s', 'signature': '%s'}";
        String right = asked.formatted(ID, LONG, signature("shut-in", LONG));
        String forged = asked.formatted(ID, LONG, signature("shut-in", OVER));
        String call = "print(to_do(%s, 'mesa-9-box', '" + KEY + "', '%s', %s))\n";
        String driver = "\n" + call.formatted(right, "2026-11-28T08:10:30Z", "[]")
                + call.formatted(right, "2026-11-28T08:10:30Z", "['" + ID + "']")
                + call.formatted(right, LONG, "[]")
                + call.formatted(forged, "2026-11-28T08:10:30Z", "[]");
        Path script = Files.writeString(folder.resolve("ask.py"), example("ask-python") + driver);

        String said = run(Map.of(), List.of(python.get(), script.toString()));

        assertThat(said.lines()).containsExactly("True", "False", "False", "False");
    }

    private static String signature(String ask, String expires) {
        return Ask.sign(
                Ask.signed("mesa-9-box", ID, ask, expires),
                java.util.HexFormat.of().parseHex(KeyRing.hash(KEY)));
    }

    private static String shell(String expires, String signature, String ask) throws Exception {
        var given = new TreeMap<>(Map.of("KEY", KEY, "BOX", "mesa-9-box", "ID", ID, "EXPIRES", expires));
        given.put("SIGNATURE", signature);
        given.put("ASK", ask);
        return run(given, List.of("bash", "-c", example("ask-shell")));
    }

    private static String example(String name) throws IOException {
        Matcher found = Pattern.compile("<!-- " + name + " -->\n```\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(Path.of("../docs/api.md")));
        assertThat(found.find()).as(name).isTrue();
        return found.group(1);
    }

    private static boolean there(String program) {
        return Stream.of(System.getenv("PATH").split(":"))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }

    private static String run(Map<String, String> given, List<String> command) throws Exception {
        var builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().putAll(given);
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes());
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return said.strip();
    }
}
