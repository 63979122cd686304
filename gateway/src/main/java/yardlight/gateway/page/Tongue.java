package yardlight.gateway.page;

import java.util.Locale;
import org.springframework.context.MessageSource;

/**
 * Says things in the language of whoever looks, from the same lists of words as the templates.
 *
 * @param locale English or Spanish
 */
public record Tongue(MessageSource words, Locale locale) {

    /**
     * @param key as it stands in the lists of words
     * @throws org.springframework.context.NoSuchMessageException when no list has it
     */
    public String say(String key, Object... values) {
        return words.getMessage(key, values, locale);
    }

    /** The same in one of two ways: {@code key.one} for one, {@code key.many} with the number for more or none. */
    public String count(String key, long count) {
        return count == 1 ? say(key + ".one") : say(key + ".many", count);
    }
}
