package yardlight.db.moving;

/**
 * Any text as one that has no control character in it: what is below a space, and half of a pair of UTF-16 without its
 * other half, is written as a backslash, {@code u} and four digits; the backslash is doubled.
 */
final class Escaped {

    private static final char SIGN = '\\';
    private static final int FIRST_PRINTABLE = 0x20;
    private static final int DIGITS = 4;
    private static final int HEX = 16;

    private Escaped() {}

    static void write(String text, StringBuilder to) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == SIGN) {
                to.append(SIGN).append(SIGN);
            } else if (c < FIRST_PRINTABLE || isAlone(text, i)) {
                to.append(SIGN).append('u').append(String.format("%04x", (int) c));
            } else {
                to.append(c);
            }
        }
    }

    private static boolean isAlone(String text, int i) {
        char c = text.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
        }
        return Character.isLowSurrogate(c) && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
    }

    /**
     * The text that was written so.
     *
     * @throws IllegalArgumentException when it was not written by {@link #write}
     */
    static String read(String cell) {
        int sign = cell.indexOf(SIGN);
        if (sign < 0) {
            return cell;
        }
        var text = new StringBuilder(cell.length());
        int from = 0;
        while (sign >= 0) {
            text.append(cell, from, sign);
            char next = sign + 1 < cell.length() ? cell.charAt(sign + 1) : ' ';
            if (next == SIGN) {
                text.append(SIGN);
                from = sign + 2;
            } else if (next == 'u' && sign + 2 + DIGITS <= cell.length()) {
                text.append((char) Integer.parseInt(cell.substring(sign + 2, sign + 2 + DIGITS), HEX));
                from = sign + 2 + DIGITS;
            } else {
                throw new IllegalArgumentException("a backslash must stand before another one or a u and four digits");
            }
            sign = cell.indexOf(SIGN, from);
        }
        return text.append(cell, from, cell.length()).toString();
    }
}
