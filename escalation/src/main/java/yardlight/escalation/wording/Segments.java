package yardlight.escalation.wording;

import java.util.ArrayList;
import java.util.List;

/**
 * How a text divides into segments of a short message (3GPP TS 23.040 clause 9.2.3.24.1, concatenation with an 8-bit
 * reference). An escape pair and a surrogate pair are never split, so a part can stay one unit short.
 *
 * @param alphabet the one that the text is sent in
 * @param parts the text of each segment, in order; one empty part for an empty text
 */
public record Segments(Alphabet alphabet, List<String> parts) {

    /** What a text is counted in. */
    public enum Alphabet {
        /** Septets of {@link Gsm7}. */
        GSM7(160, 153),
        /** Units of 16 bits; a character outside the basic plane takes two. */
        UCS2(70, 67);

        private final int alone;
        private final int joined;

        Alphabet(int alone, int joined) {
            this.alone = alone;
            this.joined = joined;
        }

        /** Units in a message of one segment. */
        public int alone() {
            return alone;
        }

        private int units(int character) {
            return switch (this) {
                case GSM7 -> Gsm7.septets(character);
                case UCS2 -> Character.charCount(character);
            };
        }

        private int units(String text) {
            return text.codePoints().map(this::units).sum();
        }
    }

    public Segments {
        parts = List.copyOf(parts);
    }

    /** The segments of this text: in the GSM alphabet when it can be written in it, else in UCS-2. */
    public static Segments of(String text) {
        Alphabet alphabet = Gsm7.encodable(text) ? Alphabet.GSM7 : Alphabet.UCS2;
        boolean one = alphabet.units(text) <= alphabet.alone;
        return new Segments(alphabet, one ? List.of(text) : split(text, alphabet));
    }

    public int count() {
        return parts.size();
    }

    /** Units of each part, septets or 16-bit units. */
    public List<Integer> sizes() {
        return parts.stream().map(alphabet::units).toList();
    }

    private static List<String> split(String text, Alphabet alphabet) {
        var parts = new ArrayList<String>();
        int start = 0;
        int units = 0;
        for (int at = 0; at < text.length(); at = text.offsetByCodePoints(at, 1)) {
            int more = alphabet.units(text.codePointAt(at));
            if (units + more > alphabet.joined) {
                parts.add(text.substring(start, at));
                start = at;
                units = 0;
            }
            units += more;
        }
        parts.add(text.substring(start));
        return parts;
    }
}
