package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Keeps the tail of a module short: no file over 300 lines, no method over 40. The layout of the sources is enforced, so a block is
 * what lies between a line and the next closing brace as far to the left.
 */
public abstract class SizeContract {

    private static final int FILE = 300;
    private static final int METHOD = 40;

    private static final Pattern TYPE = Pattern.compile("\\b(class|record|interface|enum|@interface|module)\\b");

    protected SizeContract() {}

    @ParameterizedTest
    @MethodSource("sources")
    void no_file_and_no_method_is_too_long(Path source) throws IOException {
        List<String> lines = Files.readAllLines(source);

        assertThat(lines).hasSizeLessThanOrEqualTo(FILE);
        assertThat(longMethods(lines, METHOD)).isEmpty();
    }

    @Test
    void a_long_method_is_found_and_a_long_type_is_not_one() {
        List<String> lines = List.of(
                "class A {",
                "    int one(",
                "            int a) {",
                "        return a;",
                "    }",
                "",
                "    B() {}",
                "}");

        assertThat(longMethods(lines, 4)).isEmpty();
        assertThat(longMethods(lines, 3)).containsExactly("int one(");
    }

    static Stream<Path> sources() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src"))) {
            return files.filter(file -> file.toString().endsWith(".java")).sorted().toList().stream();
        }
    }

    private static List<String> longMethods(List<String> lines, int most) {
        var found = new ArrayList<String>();
        for (int end = 0; end < lines.size(); end++) {
            if (lines.get(end).strip().equals("}")) {
                int start = start(lines, end);
                String head = lines.get(start).strip();
                if (end - start + 1 > most && !TYPE.matcher(head).find()) {
                    found.add(head);
                }
            }
        }
        return found;
    }

    private static int start(List<String> lines, int end) {
        int depth = lines.get(end).indexOf('}');
        int start = end - 1;
        while (lines.get(start).isBlank() || indent(lines.get(start)) > depth) {
            start--;
        }
        return start;
    }

    private static int indent(String line) {
        return line.length() - line.stripLeading().length();
    }
}
