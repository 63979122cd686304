package yardlight.channels.gsm;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import yardlight.escalation.wording.Gsm7;
import yardlight.escalation.wording.Segments;
import yardlight.escalation.wording.Segments.Alphabet;

/**
 * One short message: a text that fits, or one part of a longer one.
 *
 * <p>There are two ways to write it down. On the air, and so to a modem, septets are packed ({@link #userData()}). Over
 * IP, with SMPP, each septet has an octet of its own ({@link #octets()}). UCS-2 is the same in both.
 *
 * @param concatenation empty for a text in one message
 */
public record Segment(Alphabet alphabet, Optional<Concatenation> concatenation, String text) {

    private static final int BITS_OF_A_SEPTET = 7;
    private static final String CUT = "...";

    private static final Pattern LINE_END = Pattern.compile("\\R");
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cc}&&[^\\n]]");

    /** The text as a person is to read it: line breaks as LF, no other control characters, nothing empty at its end. */
    public static String clean(String text) {
        String lines = LINE_END.matcher(text).replaceAll("\n");
        return CONTROL.matcher(lines).replaceAll("").stripTrailing();
    }

    /**
     * The messages that bring this text, in order; one for an empty text.
     *
     * @param reference what the parts have in common, 0 to 255
     * @param most messages, 1 to 255: what is too long for them is cut, and ends in three dots
     */
    public static List<Segment> of(String text, int reference, int most) {
        Segments divided = Segments.of(fitting(text, most));
        int total = divided.count();
        return IntStream.rangeClosed(1, total)
                .mapToObj(part -> new Segment(
                        divided.alphabet(),
                        total == 1 ? Optional.empty() : Optional.of(new Concatenation(reference, total, part)),
                        divided.parts().get(part - 1)))
                .toList();
    }

    /** One septet or UCS-2 octet an octet, the header first if there is one. */
    public byte[] octets() {
        return joined(header(), characters());
    }

    /** TP-UD of 3GPP TS 23.040 clause 9.2.3.24: at most 140 octets, the header first if there is one. */
    public byte[] userData() {
        byte[] header = header();
        return alphabet == Alphabet.GSM7
                ? joined(header, Septets.pack(characters(), fill(header.length)))
                : joined(header, characters());
    }

    /** TP-UDL of clause 9.2.3.16: septets with {@link Alphabet#GSM7}, those of the header counted too, else octets. */
    public int userDataLength() {
        byte[] header = header();
        return alphabet == Alphabet.GSM7
                ? septets(header.length) + characters().length
                : header.length + characters().length;
    }

    /**
     * Reads what {@link #octets()} writes. With {@link Alphabet#GSM7} an {@link IllegalArgumentException} for what is no
     * septet; half a UCS-2 character at the end is left out.
     *
     * @param hasHeader whether they begin with a user data header (TP-UDHI)
     */
    public static Segment ofOctets(Alphabet alphabet, boolean hasHeader, byte[] octets) {
        byte[] header = hasHeader ? headerIn(octets) : new byte[0];
        byte[] rest = Arrays.copyOfRange(octets, header.length, octets.length);
        return new Segment(alphabet, Concatenation.in(header), text(alphabet, rest));
    }

    /**
     * Reads what {@link #userData()} writes. An {@link IllegalArgumentException} if there is less than the length says.
     *
     * @param length TP-UDL
     */
    public static Segment ofUserData(Alphabet alphabet, boolean hasHeader, byte[] userData, int length) {
        byte[] header = hasHeader ? headerIn(userData) : new byte[0];
        byte[] rest = Arrays.copyOfRange(userData, header.length, userData.length);
        if (alphabet == Alphabet.GSM7) {
            int count = Math.max(length - septets(header.length), 0);
            rest = Septets.unpack(rest, count, fill(header.length));
        } else if (length > userData.length) {
            throw new IllegalArgumentException("there must be " + length + " octets: " + userData.length);
        } else {
            rest = Arrays.copyOf(rest, Math.max(length - header.length, 0));
        }
        return new Segment(alphabet, Concatenation.in(header), text(alphabet, rest));
    }

    private byte[] header() {
        return concatenation.map(Concatenation::header).orElse(new byte[0]);
    }

    private byte[] characters() {
        return alphabet == Alphabet.GSM7 ? Gsm7.encode(text) : text.getBytes(StandardCharsets.UTF_16BE);
    }

    private static String text(Alphabet alphabet, byte[] characters) {
        return alphabet == Alphabet.GSM7
                ? Gsm7.decode(characters)
                : new String(characters, 0, characters.length & ~1, StandardCharsets.UTF_16BE);
    }

    /** With its length octet. One that claims more than there is takes all. */
    private static byte[] headerIn(byte[] octets) {
        int length = octets.length == 0 ? 0 : Math.min((octets[0] & 0xFF) + 1, octets.length);
        return Arrays.copyOf(octets, length);
    }

    /** The septets that a header takes the room of. */
    private static int septets(int octets) {
        return (octets * 8 + BITS_OF_A_SEPTET - 1) / BITS_OF_A_SEPTET;
    }

    private static int fill(int octets) {
        return septets(octets) * BITS_OF_A_SEPTET - octets * 8;
    }

    private static String fitting(String text, int most) {
        if (most < 1 || most > 255) {
            throw new IllegalArgumentException("messages for a text must be 1 to 255: " + most);
        }
        Segments divided = Segments.of(text);
        if (divided.count() <= most) {
            return text;
        }
        String begin = String.join("", divided.parts().subList(0, most));
        while (Segments.of(begin + CUT).count() > most) {
            begin = begin.substring(0, begin.offsetByCodePoints(begin.length(), -1));
        }
        return begin + CUT;
    }

    private static byte[] joined(byte[] first, byte[] second) {
        var octets = new ByteArrayOutputStream(first.length + second.length);
        octets.writeBytes(first);
        octets.writeBytes(second);
        return octets.toByteArray();
    }
}
