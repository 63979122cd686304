package yardlight.gateway.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The lists of words that the pages speak by, in both languages. */
class WordsTest {

    private static final Path RESOURCES = Path.of("src/main/resources");
    private static final Pattern KEY = Pattern.compile("#\\{([a-z][\\w.-]*[a-z\\d])[}(]");
    private static final Pattern ARGUMENT = Pattern.compile("\\{\\d");
    /** A quote before a place for a value switches that place off, as MessageFormat reads it. */
    private static final Pattern LONE_QUOTE = Pattern.compile("(?<!')'(?!')");

    @Test
    void are_the_same_in_english_and_spanish() throws IOException {
        for (Path english : lists()) {
            Path spanish =
                    english.resolveSibling(english.getFileName().toString().replace(".properties", "_es.properties"));

            assertThat(keys(spanish)).as(spanish.toString()).isEqualTo(keys(english));
        }
    }

    @Test
    void stand_in_one_list_only() throws IOException {
        var seen = new TreeMap<String, List<Path>>();
        for (Path list : lists()) {
            keys(list)
                    .forEach(key ->
                            seen.computeIfAbsent(key, none -> new ArrayList<>()).add(list));
        }

        assertThat(seen.entrySet())
                .filteredOn(entry -> entry.getValue().size() > 1)
                .isEmpty();
    }

    @Test
    void are_all_there_that_a_template_asks_for() throws IOException {
        var known = new TreeSet<String>();
        for (Path list : lists()) {
            known.addAll(keys(list));
        }
        var missing = new TreeMap<String, String>();
        for (Path template : files("templates", ".html")) {
            Matcher asked = KEY.matcher(Files.readString(template));
            while (asked.find()) {
                if (!known.contains(asked.group(1))) {
                    missing.put(asked.group(1), template.getFileName().toString());
                }
            }
        }

        assertThat(missing).isEmpty();
    }

    @Test
    void have_the_same_places_for_values_and_no_quote_that_hides_one() throws IOException {
        var wrong = new ArrayList<String>();
        for (Path english : lists()) {
            Path spanish =
                    english.resolveSibling(english.getFileName().toString().replace(".properties", "_es.properties"));
            Map<String, String> other = words(spanish);
            words(english).forEach((key, words) -> {
                String there = other.getOrDefault(key, "");
                if (!arguments(words).equals(arguments(there))) {
                    wrong.add(key + ": " + words + " / " + there);
                }
                Stream.of(words, there)
                        .filter(text -> ARGUMENT.matcher(text).find()
                                && LONE_QUOTE.matcher(text).find())
                        .forEach(text -> wrong.add(key + ": a single quote has to be doubled: " + text));
            });
        }

        assertThat(wrong).isEmpty();
    }

    private static Set<String> arguments(String words) {
        return ARGUMENT.matcher(words).results().map(found -> found.group()).collect(Collectors.toSet());
    }

    private static Set<String> keys(Path list) throws IOException {
        return new TreeSet<>(words(list).keySet());
    }

    private static Map<String, String> words(Path list) throws IOException {
        var properties = new Properties();
        try (Reader reader = Files.newBufferedReader(list, StandardCharsets.UTF_8)) {
            properties.load(reader);
        }
        return properties.stringPropertyNames().stream()
                .collect(Collectors.toMap(key -> key, properties::getProperty, (a, b) -> a, TreeMap::new));
    }

    private static List<Path> lists() throws IOException {
        var lists = new ArrayList<>(files("words", ".properties"));
        lists.add(RESOURCES.resolve("messages.properties"));
        lists.removeIf(list -> list.getFileName().toString().endsWith("_es.properties"));
        return lists;
    }

    private static List<Path> files(String folder, String ending) throws IOException {
        try (Stream<Path> files = Files.list(RESOURCES.resolve(folder))) {
            return files.filter(file -> file.getFileName().toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }
}
