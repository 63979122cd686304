package yardlight.channels.gsm;

import java.io.ByteArrayOutputStream;
import java.util.Optional;
import yardlight.escalation.wording.Gsm7;

/**
 * A number or name as it stands in a short message: 3GPP TS 23.040 clause 9.1.2.5.
 *
 * @param type the octet with the type of number and the numbering plan
 * @param digits without a plus; letters if it is a name
 */
public record TpAddress(int type, String digits) {

    private static final int INTERNATIONAL_ISDN = 0x91;
    private static final int HALF = 4;

    /** Type of number, bits 6 to 4 of the type. */
    public enum Ton {
        UNKNOWN,
        INTERNATIONAL,
        NATIONAL,
        NETWORK_SPECIFIC,
        SUBSCRIBER,
        /** Letters of the GSM alphabet, packed. */
        ALPHANUMERIC,
        ABBREVIATED,
        RESERVED
    }

    /** Of a number as {@code +15755550101}. */
    public static TpAddress to(String international) {
        return new TpAddress(INTERNATIONAL_ISDN, international.substring(1));
    }

    public Ton ton() {
        return Ton.values()[type >> 4 & 0x07];
    }

    /** As the address of a person: its length counts digits. An {@link IllegalArgumentException} if it is not of digits. */
    public byte[] octets() {
        return octets(digits.length());
    }

    /** As the address of a service centre: its length counts octets, the type among them (3GPP TS 24.011 clause 8.2.5.1). */
    public byte[] asCentre() {
        return octets(1 + (digits.length() + 1) / 2);
    }

    private byte[] octets(int length) {
        if (!digits.matches("[0-9]{1,20}")) {
            throw new IllegalArgumentException("number must be 1 to 20 digits: " + digits);
        }
        var octets = new ByteArrayOutputStream();
        octets.write(length);
        octets.write(type);
        octets.writeBytes(Octets.ofDigits(digits));
        return octets.toByteArray();
    }

    /**
     * The number of a service centre.
     *
     * @param octets its length first; may be anything
     * @return as {@code +15755550190}; empty if there is none with a country
     */
    public static Optional<String> centre(byte[] octets) {
        if (octets.length < 3) {
            return Optional.empty();
        }
        var in = new Octets(octets);
        in.next();
        var bare = new TpAddress(in.next(), "");
        String digits = in.digits((octets.length - 2) * 2);
        return bare.ton() == Ton.INTERNATIONAL ? Optional.of("+" + digits) : Optional.empty();
    }

    static TpAddress read(Octets in) {
        int length = in.next();
        int type = in.next();
        var bare = new TpAddress(type, "");
        if (bare.ton() != Ton.ALPHANUMERIC) {
            return new TpAddress(type, in.digits(length));
        }
        int septets = length * HALF / 7;
        byte[] packed = in.next((length + 1) / 2);
        return new TpAddress(type, Gsm7.decode(Septets.unpack(packed, septets, 0)));
    }
}
