package yardlight.gateway.document;

/** What may stand in a text that is stored, logged and sent. */
final class Texts {

    private Texts() {}

    /** Tabs and line ends become blanks: a text is one line. */
    static String oneLine(String text) {
        return text.replaceAll("[\\t\\r\\n]+", " ").strip();
    }

    /** Whether it holds what no text should: control characters, or halves of a character. */
    static boolean broken(String text) {
        return text.codePoints()
                .anyMatch(c -> Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE);
    }

    static int length(String text) {
        return text.codePointCount(0, text.length());
    }

    /** A strange value as it can be shown in an answer: one line, without control characters, not long. */
    static String shortened(String text, int most) {
        String line = oneLine(text);
        String shown = length(line) > most ? line.substring(0, line.offsetByCodePoints(0, most)) + "..." : line;
        return broken(shown) ? "not readable" : shown;
    }
}
