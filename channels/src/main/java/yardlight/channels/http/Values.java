package yardlight.channels.http;

import java.util.Map;
import java.util.regex.Pattern;
import yardlight.channels.Message;

/**
 * What goes in for the placeholders of a template.
 *
 * <p>A text is made to be of characters that every form of body can carry: line breaks are LF, other control characters
 * are gone, and what is no character (half a surrogate pair, U+FFFE, U+FFFF) is a question mark in a box.
 */
record Values(Map<Placeholder, String> byPlaceholder) {

    private static final Pattern LINE_BREAK = Pattern.compile("\r\n?|\u0085|\u2028|\u2029");
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cc}&&[^\n\t]]");
    private static final Pattern NO_CHARACTER = Pattern.compile("[\\p{Cs}\ufffe\uffff]");

    static Values of(Message message, String secret) {
        return new Values(Map.of(
                Placeholder.TO,
                message.address(),
                Placeholder.TEXT,
                clean(message.text()),
                Placeholder.ID,
                message.id(),
                Placeholder.AT,
                message.at().toString(),
                Placeholder.SECRET,
                secret));
    }

    String get(Placeholder placeholder) {
        return byPlaceholder.get(placeholder);
    }

    private static String clean(String text) {
        String lines = LINE_BREAK.matcher(text).replaceAll("\n");
        String shown = CONTROL.matcher(lines).replaceAll("");
        return NO_CHARACTER.matcher(shown).replaceAll("\ufffd");
    }

    /** Keeps the secret in it back. */
    @Override
    public String toString() {
        return "Values" + byPlaceholder.get(Placeholder.ID);
    }
}
