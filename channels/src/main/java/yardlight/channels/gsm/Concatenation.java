package yardlight.channels.gsm;

import java.util.Arrays;
import java.util.Optional;

/**
 * Which part of which text a segment is: the information element of 3GPP TS 23.040 clause 9.2.3.24.1, and when read also
 * that of clause 9.2.3.24.8 with a reference of 16 bits.
 *
 * @param reference what the parts of one text have in common, 0 to 65535; up to 255 where it is written
 * @param total parts of the text, 1 to 255
 * @param sequence of this part, 1 to the total
 */
public record Concatenation(int reference, int total, int sequence) {

    private static final int SHORT_REFERENCE = 0x00;
    private static final int LONG_REFERENCE = 0x08;

    public Concatenation {
        if (reference < 0 || reference > 0xFFFF) {
            throw new IllegalArgumentException("reference must be 0 to 65535: " + reference);
        }
        if (total < 1 || total > 255 || sequence < 1 || sequence > total) {
            throw new IllegalArgumentException("part must be 1 to the total, 255 at most: " + sequence + "/" + total);
        }
    }

    /** The user data header, its length first: 6 octets. An {@link IllegalStateException} if the reference is above 255. */
    public byte[] header() {
        if (reference > 0xFF) {
            throw new IllegalStateException("reference must be written in 8 bits: " + reference);
        }
        return new byte[] {5, SHORT_REFERENCE, 3, (byte) reference, (byte) total, (byte) sequence};
    }

    /**
     * What a user data header says of it.
     *
     * @param header its length first; may be anything
     * @return empty if it says nothing, or what a receiver has to ignore: no parts at all, or a part that is not among them
     */
    public static Optional<Concatenation> in(byte[] header) {
        Optional<Concatenation> found = Optional.empty();
        for (int at = 1; at + 1 < header.length; ) {
            int value = at + 2;
            int end = value + (header[at + 1] & 0xFF);
            if (end > header.length) {
                break;
            }
            // Clause 9.2.3.24: when an element is there twice, the last one counts.
            Optional<Concatenation> later = element(header[at], Arrays.copyOfRange(header, value, end));
            found = later.isPresent() ? later : found;
            at = end;
        }
        return found;
    }

    private static Optional<Concatenation> element(int identifier, byte[] value) {
        if (identifier == SHORT_REFERENCE && value.length == 3) {
            return part(value[0] & 0xFF, value[1] & 0xFF, value[2] & 0xFF);
        }
        if (identifier == LONG_REFERENCE && value.length == 4) {
            return part((value[0] & 0xFF) << 8 | value[1] & 0xFF, value[2] & 0xFF, value[3] & 0xFF);
        }
        return Optional.empty();
    }

    /** The same of numbers from outside: empty for what a receiver has to ignore. */
    public static Optional<Concatenation> part(int reference, int total, int sequence) {
        boolean sound = total >= 1 && total <= 255 && sequence >= 1 && sequence <= total;
        return sound ? Optional.of(new Concatenation(reference, total, sequence)) : Optional.empty();
    }
}
