package yardlight.escalation.wording;

import java.text.Normalizer;
import java.text.Normalizer.Form;
import java.util.HashMap;
import java.util.Map;

/**
 * Any text at all, written in the GSM alphabet as one line. A letter or digit that has no likeness there becomes a
 * question mark; any other unknown sign, a picture, a bar and a control character become a space. Runs of spaces are one space,
 * and there is none at either end.
 */
public final class Transliteration {

    private static final Map<Integer, String> LIKENESS = likenesses();

    private Transliteration() {}

    private static Map<Integer, String> likenesses() {
        var map = new HashMap<Integer, String>();
        each(map, "‐‑‒–—―−⁃•", "-");
        each(map, "‘’‚‛′`´ʹʻʼ", "'");
        each(map, "“”„‟″«»", "\"");
        each(map, "|¦⁄∕÷", "/");
        each(map, "·∙", ".");
        each(map, "×", "x");
        each(map, "±", "+/-");
        each(map, "≤", "<=");
        each(map, "≥", ">=");
        each(map, "←", "<-");
        each(map, "→", "->");
        each(map, "¢", "c");
        each(map, "°\t\n\f\r", " ");
        // "5½" must not become 51/2.
        each(map, "¼", " 1/4");
        each(map, "½", " 1/2");
        each(map, "¾", " 3/4");
        letters(map);
        return Map.copyOf(map);
    }

    /** Not decomposed by Unicode: the stroke or ligature is part of the letter. */
    private static void letters(Map<Integer, String> map) {
        // The sign in front of a unit, in both of its code points.
        each(map, "\u00B5\u03BC", "u");
        each(map, "ł", "l");
        each(map, "Ł", "L");
        each(map, "đð", "d");
        each(map, "ĐÐ", "D");
        each(map, "ħ", "h");
        each(map, "Ħ", "H");
        each(map, "ı", "i");
        each(map, "þ", "th");
        each(map, "Þ", "TH");
        each(map, "œ", "oe");
        each(map, "Œ", "OE");
        each(map, "ẞ", "SS");
        // The alphabet has only those Greek capitals that do not look like a Latin one.
        String greek = "ΑΒΕΖΗΙΚΜΝΟΡΤΥΧ";
        String latin = "ABEZHIKMNOPTYX";
        for (int i = 0; i < greek.length(); i++) {
            map.put((int) greek.charAt(i), latin.substring(i, i + 1));
        }
    }

    private static void each(Map<Integer, String> map, String characters, String likeness) {
        characters.codePoints().forEach(character -> map.put(character, likeness));
    }

    /** The text in the GSM alphabet: always encodable, whatever comes in. */
    public static String gsm(String text) {
        var out = new StringBuilder(text.length());
        Normalizer.normalize(text, Form.NFC).codePoints().forEach(character -> {
            // What is known is kept whole; only the rest is taken apart, so that é stays é and á becomes a.
            if (!written(character, out)) {
                Normalizer.normalize(Character.toString(character), Form.NFKD)
                        .codePoints()
                        .forEach(part -> append(part, out));
            }
        });
        return out.toString().strip().replaceAll(" {2,}", " ");
    }

    /** Whether no letter and no digit of the text is lost in the GSM alphabet. */
    static boolean keeps(String text) {
        return count(gsm(text)) == count(text);
    }

    private static long count(String text) {
        return text.chars().filter(character -> character == '?').count();
    }

    private static void append(int character, StringBuilder out) {
        if (written(character, out)) {
            return;
        }
        if (Character.isDigit(character)) {
            out.append(Character.digit(character, 10));
        } else if (Character.isLetter(character)) {
            int capital = Character.toUpperCase(character);
            if (!written(capital, out)) {
                out.append('?');
            }
        } else if (!silent(Character.getType(character))) {
            out.append(' ');
        }
    }

    private static boolean written(int character, StringBuilder out) {
        String likeness = LIKENESS.get(character);
        if (likeness != null) {
            out.append(likeness);
        } else if (Gsm7.encodable(character)) {
            out.appendCodePoint(character);
        } else {
            return false;
        }
        return true;
    }

    /** Accents that stood on a letter, joiners, direction marks. */
    private static boolean silent(int type) {
        return switch (type) {
            case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> true;
            default -> false;
        };
    }
}
