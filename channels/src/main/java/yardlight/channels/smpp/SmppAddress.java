package yardlight.channels.smpp;

import java.util.Optional;
import java.util.regex.Pattern;
import org.jsmpp.SMPPConstant;
import yardlight.channels.phone.PhoneNumbers;
import yardlight.channels.phone.PhoneNumbers.Kind;

/**
 * A number as it stands in a unit of data: its type (section 5.2.5), its plan (5.2.6), and digits without a plus. Outside of
 * SMPP a number is always in the form of {@link PhoneNumbers}.
 */
record SmppAddress(byte ton, byte npi, String digits) {

    private static final Pattern SHORT_CODE = Pattern.compile("[0-9]{3,8}");
    /** 3GPP TS 23.040 9.1.2.5 has room for 11 characters. */
    private static final Pattern LETTERS = Pattern.compile("[A-Za-z0-9 ]{1,11}");

    /** Of an address that nobody complains about. */
    static SmppAddress to(String address) {
        return new SmppAddress(SMPPConstant.TON_INTERNATIONAL, SMPPConstant.NPI_ISDN, address.substring(1));
    }

    /**
     * Of the sender that the settings name. Type and plan for short codes and letters: common practice, no source. An
     * {@link IllegalArgumentException} for what is none of the three.
     */
    static SmppAddress from(String sender) {
        if (PhoneNumbers.isInternational(sender)) {
            return to(sender);
        }
        if (SHORT_CODE.matcher(sender).matches()) {
            return new SmppAddress(SMPPConstant.TON_NETWORK_SPECIFIC, SMPPConstant.NPI_UNKNOWN, sender);
        }
        if (LETTERS.matcher(sender).matches()) {
            return new SmppAddress(SMPPConstant.TON_ALPHANUMERIC, SMPPConstant.NPI_UNKNOWN, sender);
        }
        throw new IllegalArgumentException(
                "SMPP sender must be a number as +15755550100, a short code, or up to 11 letters and digits: "
                        + sender);
    }

    /** Nobody: section 4.4.1 lets the centre put in what it knows of us. */
    static SmppAddress unknown() {
        return new SmppAddress(SMPPConstant.TON_UNKNOWN, SMPPConstant.NPI_UNKNOWN, "");
    }

    /** The form in which an answer to a sender is addressed: {@link PhoneNumbers#international}. */
    String international(Optional<String> home) {
        return PhoneNumbers.international(kind(), digits, home);
    }

    private Kind kind() {
        return switch (ton) {
            case SMPPConstant.TON_INTERNATIONAL -> Kind.INTERNATIONAL;
            case SMPPConstant.TON_NATIONAL -> Kind.NATIONAL;
            case SMPPConstant.TON_ALPHANUMERIC -> Kind.NAME;
            default -> Kind.UNKNOWN;
        };
    }
}
