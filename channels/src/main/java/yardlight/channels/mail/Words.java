package yardlight.channels.mail;

import java.util.regex.Pattern;

/** Makes text fit for a mail. */
final class Words {

    private static final Pattern LINE_END = Pattern.compile("\\R");
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cc}&&[^\\n\\t]]");
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    private Words() {}

    /** The same text with {@code \n} for every kind of line end, without control characters and without trailing lines. */
    static String clean(String text) {
        String lines = LINE_END.matcher(text).replaceAll("\n");
        return CONTROL.matcher(lines).replaceAll("").stripTrailing();
    }

    /** The first words on one line, as many as fit; a first word that is too long is cut. */
    static String headline(String text, int longest) {
        String line = BLANKS.matcher(text).replaceAll(" ").strip();
        if (line.length() <= longest) {
            return line;
        }
        int space = line.lastIndexOf(' ', longest);
        if (space > 0) {
            return line.substring(0, space);
        }
        return line.substring(0, Character.isHighSurrogate(line.charAt(longest - 1)) ? longest - 1 : longest);
    }

    static boolean isAscii(String text) {
        return text.chars().allMatch(c -> c < 128);
    }

    static int longestLine(String text) {
        return text.lines().mapToInt(String::length).max().orElse(0);
    }
}
