package yardlight.gateway.sentence;

import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import org.springframework.context.MessageSource;
import yardlight.escalation.sentence.Sentence;

/**
 * Says a {@link Sentence} by the lists of words: {@code said.test.quiet}. A value for which there are words of its own,
 * {@code said.cannot.1.normal}, is said by them. What is in no list is said in English.
 */
public final class Sentences {

    private static final String LIST = "said.";

    private Sentences() {}

    public static String say(Sentence sentence, MessageSource words, Locale locale) {
        return say(sentence, words, locale, value -> value);
    }

    /**
     * @param shown how a value reads for which there are no words, such as a time
     */
    public static String say(Sentence sentence, MessageSource words, Locale locale, UnaryOperator<String> shown) {
        String key = LIST + sentence.code();
        List<String> values = sentence.values();
        var said = new Object[values.size()];
        for (int i = 0; i < said.length; i++) {
            String value = values.get(i);
            said[i] = words.getMessage(key + "." + i + "." + value, null, shown.apply(value), locale);
        }
        return words.getMessage(key, said, sentence.english(), locale);
    }
}
