package yardlight.escalation.wording;

import java.io.ByteArrayOutputStream;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/**
 * The GSM 7-bit default alphabet with its extension table (3GPP TS 23.038 clauses 6.2.1 and 6.2.1.1). Lengths are in
 * septets: 1 for a character of the alphabet, 2 for one of the extension table.
 */
public final class Gsm7 {

    /** The septet that announces a character of the extension table. */
    public static final int ESCAPE = 0x1B;

    /** In code order, sixteen a line. The escape stands in its own place and is no character. */
    private static final String ALPHABET = "@£$¥èéùìòÇ\nØø\rÅå"
            + "Δ_ΦΓΛΩΠΨΣΘΞ\u001bÆæßÉ"
            + " !\"#¤%&'()*+,-./"
            + "0123456789:;<=>?"
            + "¡ABCDEFGHIJKLMNO"
            + "PQRSTUVWXYZÄÖÑÜ§"
            + "¿abcdefghijklmno"
            + "pqrstuvwxyzäöñüà";

    private static final Map<Integer, Character> EXTENSION = Map.ofEntries(
            Map.entry(0x0A, '\f'),
            Map.entry(0x14, '^'),
            Map.entry(0x28, '{'),
            Map.entry(0x29, '}'),
            Map.entry(0x2F, '\\'),
            Map.entry(0x3C, '['),
            Map.entry(0x3D, '~'),
            Map.entry(0x3E, ']'),
            Map.entry(0x40, '|'),
            Map.entry(0x65, '€'));

    private static final Map<Integer, byte[]> SEPTETS = septetsByCharacter();

    private Gsm7() {}

    private static Map<Integer, byte[]> septetsByCharacter() {
        var septets = new HashMap<Integer, byte[]>();
        for (int code = 0; code < ALPHABET.length(); code++) {
            septets.put((int) ALPHABET.charAt(code), new byte[] {(byte) code});
        }
        septets.remove(ESCAPE);
        EXTENSION.forEach(
                (code, character) -> septets.put((int) character, new byte[] {(byte) ESCAPE, code.byteValue()}));
        return Map.copyOf(septets);
    }

    /** Whether this character (a Unicode code point) is in the alphabet or its extension table. */
    public static boolean encodable(int character) {
        return SEPTETS.containsKey(character);
    }

    /** Whether every character of the text is. */
    public static boolean encodable(String text) {
        return text.codePoints().allMatch(Gsm7::encodable);
    }

    /** How many septets this character takes: 1 or 2. An {@link IllegalArgumentException} when it is in neither table. */
    public static int septets(int character) {
        return codes(character).length;
    }

    /** How many septets the text takes. An {@link IllegalArgumentException} when it cannot be written in the alphabet. */
    public static int septets(String text) {
        return text.codePoints().map(Gsm7::septets).sum();
    }

    /** The text as septets, one an octet, not packed. An {@link IllegalArgumentException} as for {@link #septets}. */
    public static byte[] encode(String text) {
        var octets = new ByteArrayOutputStream(text.length());
        text.codePoints().forEach(character -> octets.writeBytes(codes(character)));
        return octets.toByteArray();
    }

    /**
     * The text that these septets, one an octet, stand for. An escape before a code that the extension table does not
     * have is shown with it as one space, an escape at the very end as a space.
     */
    public static String decode(byte[] septets) {
        var text = new StringBuilder(septets.length);
        for (int i = 0; i < septets.length; i++) {
            if (septets[i] < 0) {
                throw new IllegalArgumentException("septet must be below 128: " + (septets[i] & 0xFF));
            }
            if (septets[i] != ESCAPE) {
                text.append(ALPHABET.charAt(septets[i]));
            } else {
                i++;
                text.append(i < septets.length ? EXTENSION.getOrDefault((int) septets[i], ' ') : ' ');
            }
        }
        return text.toString();
    }

    private static byte[] codes(int character) {
        byte[] codes = SEPTETS.get(character);
        if (codes == null) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "character must be in the GSM 7-bit alphabet: U+%04X", character));
        }
        return codes;
    }
}
