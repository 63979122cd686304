package yardlight.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page about the locks names tests that there are, and leaves no item without a word. */
class SecurityPageTest {

    private static final Pattern NAMED = Pattern.compile("`(\\w+(?:Test|IT|Contract))`");

    private final String page = read(Path.of("..", "docs", "security.md"));

    @Test
    void names_only_tests_that_exist() throws IOException {
        Set<String> named =
                NAMED.matcher(page).results().map(one -> one.group(1)).collect(Collectors.toCollection(TreeSet::new));

        assertThat(named).hasSizeGreaterThan(40);
        assertThat(testClasses()).containsAll(named);
    }

    @Test
    void says_of_every_item_what_holds_it() {
        String items = page.substring(page.indexOf("| item |"), page.indexOf("## Keys"));
        List<String> rows =
                items.lines().skip(2).filter(line -> line.startsWith("|")).toList();

        assertThat(rows).hasSizeGreaterThan(70);
        assertThat(rows).allSatisfy(row -> {
            String[] cells = row.substring(1, row.length() - 1).split("\\|", -1);
            assertThat(cells).hasSize(3).allSatisfy(cell -> assertThat(cell).isNotBlank());
        });
        List<String> numbers = Pattern.compile("\\b\\d+\\.\\d+\\.\\d+\\b")
                .matcher(rows.stream().map(row -> row.split("\\|")[1]).collect(Collectors.joining(" ")))
                .results()
                .map(MatchResult::group)
                .toList();
        assertThat(numbers).doesNotHaveDuplicates();
    }

    private static Set<String> testClasses() throws IOException {
        var classes = new TreeSet<String>();
        for (String module : List.of("channels", "db", "gateway", "demo", "escalation")) {
            try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "test", "java"))) {
                files.map(file -> file.getFileName().toString())
                        .filter(name -> name.endsWith(".java"))
                        .forEach(name -> classes.add(name.replace(".java", "")));
            }
        }
        return classes;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
