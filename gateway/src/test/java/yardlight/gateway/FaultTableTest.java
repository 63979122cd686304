package yardlight.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Each row of the fault table in docs/operating.md names tests that there are. */
class FaultTableTest {

    private static final Pattern NAMED = Pattern.compile("`(\\w+)\\.(\\w+)`");

    @Test
    void has_twenty_rows_that_lose_nothing_and_name_tests_that_exist() throws IOException {
        List<String> sources = testSources();

        List<List<String>> rows = rows();

        assertThat(rows).hasSizeGreaterThanOrEqualTo(20);
        assertThat(rows).allSatisfy(row -> {
            assertThat(row).hasSize(5);
            assertThat(row.get(3)).startsWith("nothing");
            List<MatchResult> tests = NAMED.matcher(row.get(4)).results().toList();
            assertThat(tests).isNotEmpty();
            for (MatchResult named : tests) {
                assertThat(sources.stream().filter(source -> holds(source, named.group(1), named.group(2))))
                        .as(named.group())
                        .hasSize(1);
            }
        });
    }

    /** Whether the source is that class, and the annotations of that method make it a test. */
    private static boolean holds(String source, String type, String method) {
        int at = source.indexOf("    void " + method + "(");
        return source.contains("class " + type + " ")
                && at >= 0
                && source.substring(source.lastIndexOf("\n\n", at), at).matches("(?s).*@\\w*Test\\b.*");
    }

    /** The cells of the rows of the one table below the heading. */
    private static List<List<String>> rows() throws IOException {
        String text = Files.readString(Path.of("..", "docs", "operating.md"));
        String table = text.substring(text.indexOf("| fault |"));
        var rows = new ArrayList<List<String>>();
        for (String line :
                table.lines().skip(2).takeWhile(line -> line.startsWith("|")).toList()) {
            rows.add(Stream.of(line.substring(1, line.length() - 1).split("\\|", -1))
                    .map(String::strip)
                    .toList());
        }
        return rows;
    }

    private static List<String> testSources() throws IOException {
        var sources = new ArrayList<String>();
        for (String module : List.of("channels", "db", "gateway", "demo", "escalation")) {
            try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "test", "java"))) {
                files.filter(file -> file.toString().endsWith(".java"))
                        .map(FaultTableTest::read)
                        .forEach(sources::add);
            }
        }
        return sources;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
