package yardlight.escalation.reply;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Puts several ways to write one thing into one: signs for words, words for numbers, ten-four for OK. */
final class Spelling {

    private record Way(Pattern written, String meant) {}

    private static final List<Way> WAYS = List.of(
            way("[\\x{1F44D}\\x{2705}\\x{1F44C}\\x{1F197}\\x{2714}]", " thumb "),
            way("[\\x{1F44E}\\x{274C}\\x{1F6AB}]", " thumbdown "),
            // Somebody's telephone.
            way("(\\+?1[- .]?)?(\\(?\\d{3}\\)?[- .]?)\\d{3}[- .]?\\d{4}\\b", " phone "),
            way("\\b10[ -]{1,3}4\\b|\\bten[ -]four\\b|\\bdiez[ -]cuatro\\b", " ok "),
            way(
                    "\\bo\\s?\\.\\s?k\\b\\.?|\\b0k(?=\\b|\\d)|\\bo k\\b|\\bokey dokey\\b|\\bokie dokie\\b|\\ball right\\b",
                    " ok "),
            way(
                    "\\b(i |i've )?(got|have) (it|this)\\b|\\bgot ya\\b|\\bi'?ll take (it|this)\\b|\\bon it\\b|\\bgood buddy\\b",
                    " ok "),
            way(
                    "\\b(lo|la) tengo\\b|\\byo (me encargo|lo veo)\\b(?! de)|\\bme encargo\\b(?! de)|\\bde acuerdo\\b",
                    " ok "),
            way("[\"\u201c\u201d\u00ab\u00bb()]", " "),
            way("\\b(ok|okay) ?[:=-] ?(?=\\d)", "ok "),
            way("(\\d) ?- ?(?=ok\\b)", "$1 "),
            way(" -(?=\\p{L})", ", "),
            way("\\b(\\d{2,4}) ?[/+] ?(?=\\d{2,4}\\b(?! ?/))", "$1 and "),
            way("\\bon my way\\b", " omw "),
            way("\\bcopy that\\b", " copy "),
            way("\\bi'?ll get (?=\\d)", " got "),
            way("\\bno (hay )?(problem|problema|worries|prob)\\b|\\bno need\\b[^.,!?]*", " "),
            way("\\bis mine\\b", " mine "),
            way("\\bone and a half (hours|hrs)\\b", " 90min "),
            way("\\b(an|one|1|una) ?(hour|hora) (and a half|y media)\\b|\\bhora y media\\b", " 90min "),
            way("\\bhalf (an )?hour\\b|\\bmedia hora\\b", " 30min "),
            way("\\b(an|one|una) (hour|hora)\\b", " 1h "));

    private static final List<String> ENGLISH_ONES = List.of(
            "zero",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen");
    private static final List<String> SPANISH_ONES = List.of(
            "cero",
            "uno",
            "dos",
            "tres",
            "cuatro",
            "cinco",
            "seis",
            "siete",
            "ocho",
            "nueve",
            "diez",
            "once",
            "doce",
            "trece",
            "catorce",
            "quince",
            "dieciseis",
            "diecisiete",
            "dieciocho",
            "diecinueve");
    private static final List<String> ENGLISH_TENS =
            List.of("", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety");
    private static final List<String> SPANISH_TENS =
            List.of("", "", "veinte", "treinta", "cuarenta", "cincuenta", "sesenta", "setenta", "ochenta", "noventa");

    private static final Pattern NUMBER_WORDS = Pattern.compile("\\b(?:(" + any(ENGLISH_TENS) + "|" + any(SPANISH_TENS)
            + ")(?:(?: |-| y )(" + any(ENGLISH_ONES.subList(1, 10)) + "|" + any(SPANISH_ONES.subList(1, 10)) + "))?|("
            + any(ENGLISH_ONES.subList(2, 20)) + "|" + any(SPANISH_ONES.subList(2, 20)) + "))\\b");

    private static final Pattern HUNDRED = Pattern.compile("\\b(?:(?:one|a) hundred(?: and)?|ciento) (\\d{1,2})\\b");

    private static final Pattern AND_A_HALF = Pattern.compile(
            "\\b(\\d{1,2}|one(?= and)) ?(?:(?:hours?|hrs?|horas?|h) (?:and a half|y media)|and a half (?:hours|hrs|horas))\\b");

    private Spelling() {}

    private static Way way(String written, String meant) {
        return new Way(Pattern.compile(written), meant);
    }

    private static String any(List<String> words) {
        return words.stream().filter(word -> !word.isEmpty()).collect(Collectors.joining("|"));
    }

    /** @param plain as {@link Letters} leave it */
    static String settled(String plain) {
        String text = plain;
        for (Way way : WAYS) {
            text = way.written().matcher(text).replaceAll(way.meant());
        }
        String below = NUMBER_WORDS.matcher(text).replaceAll(Spelling::digits);
        String digits = HUNDRED.matcher(below)
                .replaceAll(over -> "1" + "0".repeat(2 - over.group(1).length()) + over.group(1));
        return AND_A_HALF.matcher(digits).replaceAll("$1.5h");
    }

    private static String digits(MatchResult words) {
        if (words.group(1) == null) {
            return String.valueOf(place(ENGLISH_ONES, SPANISH_ONES, words.group(3)));
        }
        int ones = words.group(2) == null ? 0 : place(ENGLISH_ONES, SPANISH_ONES, words.group(2));
        return String.valueOf(10 * place(ENGLISH_TENS, SPANISH_TENS, words.group(1)) + ones);
    }

    private static int place(List<String> english, List<String> spanish, String word) {
        return Math.max(english.indexOf(word), spanish.indexOf(word));
    }
}
