package yardlight.channels.smpp;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import org.jsmpp.bean.AbstractSmCommand;
import org.jsmpp.bean.DeliverSm;
import yardlight.channels.gsm.Concatenation;
import yardlight.escalation.wording.Gsm7;

/**
 * The words of a deliver_sm (section 4.6.1) or data_sm (4.7.1), and which part of a text they are.
 *
 * @param part by the header of 3GPP TS 23.040 or by the sar parameters (sections 5.3.2.22 to 5.3.2.24); empty for a whole
 */
record IncomingText(String text, Optional<Concatenation> part) {

    /** Codings of section 5.2.19 in which each octet is a character, or which are no text and are shown so all the same. */
    private static final int ASCII = 0x01;

    private static final int OCTETS = 0x02;
    private static final int LATIN_1 = 0x03;
    private static final int MORE_OCTETS = 0x04;

    static IncomingText of(AbstractSmCommand unit) {
        byte[] octets = octets(unit);
        int header = unit.isUdhi() && octets.length > 0 ? Math.min((octets[0] & 0xFF) + 1, octets.length) : 0;
        String text = text(unit.getDataCoding() & 0xFF, Arrays.copyOfRange(octets, header, octets.length));
        return new IncomingText(
                text, Concatenation.in(Arrays.copyOf(octets, header)).or(() -> sar(unit)));
    }

    /** short_message, or message_payload (section 5.3.2.32) in its stead. */
    private static byte[] octets(AbstractSmCommand unit) {
        byte[] octets = unit instanceof DeliverSm deliver ? deliver.getShortMessage() : new byte[0];
        return octets.length > 0
                ? octets
                : Tlv.MESSAGE_PAYLOAD.in(unit.getOptionalParameters()).orElse(octets);
    }

    private static String text(int coding, byte[] characters) {
        if (isUcs2(coding)) {
            return new String(characters, 0, characters.length & ~1, StandardCharsets.UTF_16BE);
        }
        return isOctets(coding) || !areSeptets(characters)
                ? new String(characters, StandardCharsets.ISO_8859_1)
                : Gsm7.decode(characters);
    }

    /** Also in the groups of 3GPP TS 23.038 clause 4, which section 5.2.19 takes over: with a class, and with a waiting mark. */
    private static boolean isUcs2(int coding) {
        return coding == 0x08 || (coding & 0xFC) == 0x18 || (coding & 0xF0) == 0xE0;
    }

    private static boolean isOctets(int coding) {
        return coding == ASCII || coding == OCTETS || coding == LATIN_1 || coding == MORE_OCTETS;
    }

    /** If not, the centre's default alphabet is another one than that of SMS; Latin-1 is the likeliest. */
    private static boolean areSeptets(byte[] characters) {
        for (byte character : characters) {
            if (character < 0) {
                return false;
            }
        }
        return true;
    }

    private static Optional<Concatenation> sar(AbstractSmCommand unit) {
        var parameters = unit.getOptionalParameters();
        return Tlv.SAR_MSG_REF_NUM
                .numberIn(parameters)
                .flatMap(reference -> Concatenation.part(
                        reference & 0xFFFF,
                        Tlv.SAR_TOTAL_SEGMENTS.numberIn(parameters).orElse(0),
                        Tlv.SAR_SEGMENT_SEQNUM.numberIn(parameters).orElse(0)))
                .filter(part -> part.total() > 1);
    }
}
