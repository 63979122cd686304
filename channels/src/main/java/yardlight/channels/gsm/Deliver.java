package yardlight.channels.gsm;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import yardlight.escalation.wording.Segments.Alphabet;

/**
 * SMS-DELIVER: a short message that the service centre brings us (3GPP TS 23.040 clause 9.2.2.1).
 *
 * @param at when the centre got it; empty where its time makes no sense
 * @param part empty for a text in one message
 */
public record Deliver(TpAddress from, Optional<Instant> at, Optional<Concatenation> part, String text) {

    /** TP-Message-Type-Indicator, clause 9.2.3.1, of what comes from a centre. */
    static final int TYPE = 0x03;

    private static final int DELIVER = 0x00;
    private static final int HEADER = 0x40;

    /** Whether the octets, without the address of the service centre, are one. */
    public static boolean is(byte[] octets) {
        return octets.length > 0 && (octets[0] & TYPE) == DELIVER;
    }

    /** Of octets without the address of the service centre. An {@link IllegalArgumentException} if they cannot be read. */
    public static Deliver of(byte[] octets) {
        var in = new Octets(octets);
        boolean header = (in.next() & HEADER) != 0;
        TpAddress from = TpAddress.read(in);
        in.next();
        int coding = in.next();
        Optional<Instant> at = Timestamp.read(in);
        int length = in.next();
        byte[] userData = in.rest();
        return switch (Coding.of(coding)) {
            case GSM7 -> of(from, at, Segment.ofUserData(Alphabet.GSM7, header, userData, length));
            case UCS2 -> of(from, at, Segment.ofUserData(Alphabet.UCS2, header, userData, length));
            case OCTETS -> ofOctets(from, at, header, userData);
        };
    }

    private static Deliver of(TpAddress from, Optional<Instant> at, Segment segment) {
        return new Deliver(from, at, segment.concatenation(), segment.text());
    }

    /** No text by the standard. Latin-1 is the likeliest that somebody meant. */
    private static Deliver ofOctets(TpAddress from, Optional<Instant> at, boolean hasHeader, byte[] userData) {
        int header = hasHeader && userData.length > 0 ? Math.min((userData[0] & 0xFF) + 1, userData.length) : 0;
        String text = new String(userData, header, userData.length - header, StandardCharsets.ISO_8859_1);
        return new Deliver(from, at, Concatenation.in(Arrays.copyOf(userData, header)), text);
    }

    /** What a TP-Data-Coding-Scheme means: 3GPP TS 23.038 clause 4. What is reserved there counts as the GSM alphabet. */
    private enum Coding {
        GSM7,
        OCTETS,
        UCS2;

        static Coding of(int scheme) {
            int group = scheme >> 4;
            if (group < 0x08) {
                boolean compressed = (scheme & 0x20) != 0;
                return compressed ? OCTETS : alphabet(scheme >> 2 & 0x03);
            }
            return switch (group) {
                case 0x0E -> UCS2;
                case 0x0F -> alphabet(scheme >> 2 & 0x01);
                default -> GSM7;
            };
        }

        private static Coding alphabet(int bits) {
            return switch (bits) {
                case 1 -> OCTETS;
                case 2 -> UCS2;
                default -> GSM7;
            };
        }
    }
}
