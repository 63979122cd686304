package yardlight.gateway.sentence;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.context.support.ResourceBundleMessageSource;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.heartbeat.Clue;
import yardlight.escalation.heartbeat.Evidence;
import yardlight.escalation.sentence.Sentence;

/** What the rules and the doors say, in both languages. */
class SentencesTest {

    private static final Locale SPANISH = Locales.SPANISH;
    private static final Pattern CODE = Pattern.compile("Sentence\\.of\\(\\s*\"([a-z][a-z.-]*[a-z])\"");
    private static final Pattern RULE = Pattern.compile("\"(must\\.[a-z-]+)\"");

    private final ResourceBundleMessageSource words = words();

    private static ResourceBundleMessageSource words() {
        var words = new ResourceBundleMessageSource();
        words.setBasename("words/said");
        words.setDefaultEncoding("UTF-8");
        words.setFallbackToSystemLocale(false);
        return words;
    }

    @Test
    void are_said_in_the_language_of_the_reader_values_included() {
        var refusal = Sentence.of(
                "cannot",
                "cannot shelve an alarm that is normal: water-tank/high-high",
                "shelve",
                AlarmState.NORMAL.word(),
                "water-tank/high-high");

        assertThat(Sentences.say(refusal, words, SPANISH))
                .isEqualTo("no se puede aplazar una alarma que está normal: water-tank/high-high");
        assertThat(Sentences.say(refusal, words, Locale.ENGLISH))
                .isEqualTo("cannot put aside an alarm that is normal: water-tank/high-high");
    }

    @Test
    void for_which_there_are_no_words_are_said_in_english() {
        assertThat(Sentences.say(Sentence.plain("the tank is {0} high"), words, SPANISH))
                .isEqualTo("the tank is {0} high");
        assertThat(Sentences.say(Sentence.of("nothing.of-ours", "as it is", "x"), words, SPANISH))
                .isEqualTo("as it is");
    }

    /** Those whose code is put together have lists of their own. */
    @Test
    void are_all_in_the_list() throws IOException {
        Set<String> asked = new TreeSet<>();
        for (Path source : sources()) {
            String text = Files.readString(source);
            Stream.of(CODE, RULE)
                    .forEach(
                            form -> form.matcher(text).results().forEach(found -> asked.add("said." + found.group(1))));
        }
        for (AlarmState state : AlarmState.values()) {
            asked.add("said.cannot.1." + state.word());
        }

        for (Clue clue : Clue.values()) {
            List<String> abouts = clue.name().endsWith("QUIET") ? List.of("1 box", "2 boxes") : List.of("wells");
            abouts.forEach(about -> asked.add("said."
                    + new Evidence(clue, Instant.EPOCH, about).sentence().code()));
        }

        assertThat(asked).hasSizeGreaterThan(25);
        assertThat(keys()).containsAll(asked);
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> ours = Files.walk(Path.of("src/main/java"));
                Stream<Path> rules = Files.walk(Path.of("../escalation/src/main/java"))) {
            return Stream.concat(ours, rules)
                    .filter(file -> file.toString().endsWith(".java"))
                    .collect(Collectors.toList());
        }
    }

    private static Set<String> keys() throws IOException {
        var list = new Properties();
        try (var reader =
                Files.newBufferedReader(Path.of("src/main/resources/words/said.properties"), StandardCharsets.UTF_8)) {
            list.load(reader);
        }
        return list.stringPropertyNames();
    }
}
