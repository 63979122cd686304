package yardlight.escalation.wording;

/** Cuts a name that is too long: after a whole word where it can, at a hyphen, inside the first word where it must. */
final class Shortening {

    private Shortening() {}

    /** The text, or as many of its first words as fit into so many septets; the text must be in the GSM alphabet. */
    static String to(int septets, String text) {
        int end = fits(septets, text);
        if (end == text.length()) {
            return text;
        }
        int space = text.lastIndexOf(' ', end);
        int border = space > 0 ? space : text.lastIndexOf('-', end);
        return border > 0 ? withoutLooseEnd(text.substring(0, border)) : text.substring(0, end);
    }

    /** How many characters fit. */
    private static int fits(int septets, String text) {
        int left = septets;
        for (int i = 0; i < text.length(); i++) {
            left -= Gsm7.septets(text.charAt(i));
            if (left < 0) {
                return i;
            }
        }
        return text.length();
    }

    /** A dash or an opening bracket only made sense with the word that is gone. */
    private static String withoutLooseEnd(String words) {
        int end = words.length();
        while (end > 0 && " -,;:/&+(".indexOf(words.charAt(end - 1)) >= 0) {
            end--;
        }
        return end > 0 ? words.substring(0, end) : words;
    }
}
