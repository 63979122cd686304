package yardlight.gateway.page;

import java.time.Instant;
import java.util.Locale;
import java.util.regex.Pattern;
import org.springframework.context.MessageSource;
import yardlight.escalation.sentence.Sentence;
import yardlight.gateway.sentence.Sentences;

/**
 * Says things in the language of whoever looks, from the same lists of words as the templates.
 *
 * @param locale English or Spanish
 */
public record Tongue(MessageSource words, Locale locale) {

    private static final Pattern TIME = Pattern.compile("\\d{4}-\\d\\d-\\d\\dT[\\d:.]+Z");

    /**
     * @param key as it stands in the lists of words
     * @throws org.springframework.context.NoSuchMessageException when no list has it
     */
    public String say(String key, Object... values) {
        return words.getMessage(key, values, locale);
    }

    /** What the rules say. */
    public String say(Sentence sentence) {
        return Sentences.say(sentence, words, locale);
    }

    /** What the rules say, with the times that are in it by this clock. */
    public String say(Sentence sentence, Clockface clock) {
        return Sentences.say(
                sentence,
                words,
                locale,
                value -> TIME.matcher(value).matches() ? clock.read(Instant.parse(value)) : value);
    }

    /** The same in one of two ways: {@code key.one} for one, {@code key.many} with the number for more or none. */
    public String count(String key, long count) {
        return count == 1 ? say(key + ".one") : say(key + ".many", count);
    }
}
