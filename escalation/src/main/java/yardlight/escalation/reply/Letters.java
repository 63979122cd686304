package yardlight.escalation.reply;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Letters without what hands leave out or phones put in: case, accents, curly quotes, kinds of blanks. */
final class Letters {

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern BLANKS = Pattern.compile("[\\s\\p{Z}\\p{Cc}]+");
    private static final Pattern INVISIBLE = Pattern.compile("[\\p{Cf}\\x{FE00}-\\x{FE0F}]+");
    private static final Pattern APOSTROPHES = Pattern.compile("[\u2018\u2019\u02bc\u00b4`]");
    private static final Pattern DASHES = Pattern.compile("[\u2010-\u2015\u2212]");

    private Letters() {}

    static String plain(String text) {
        String apart = Normalizer.normalize(text, Normalizer.Form.NFKD);
        String bare = MARKS.matcher(INVISIBLE.matcher(apart).replaceAll("")).replaceAll("");
        String quotes = APOSTROPHES.matcher(bare).replaceAll("'");
        return BLANKS.matcher(DASHES.matcher(quotes).replaceAll("-"))
                .replaceAll(" ")
                .toLowerCase(Locale.ROOT);
    }
}
