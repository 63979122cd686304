package yardlight.channels.smpp;

import com.google.i18n.phonenumbers.NumberParseException;
import com.google.i18n.phonenumbers.PhoneNumberUtil;
import com.google.i18n.phonenumbers.PhoneNumberUtil.PhoneNumberFormat;
import com.google.i18n.phonenumbers.PhoneNumberUtil.ValidationResult;
import com.google.i18n.phonenumbers.Phonenumber.PhoneNumber;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jsmpp.SMPPConstant;

/**
 * A number as it stands in a unit of data: its type (section 5.2.5), its plan (5.2.6), and digits without a plus.
 *
 * <p>Outside of SMPP a number is always in the international form of ITU-T E.164, {@code +15755550101}: a plus and at most
 * 15 digits, the country's code first.
 */
record SmppAddress(byte ton, byte npi, String digits) {

    private static final Pattern INTERNATIONAL = Pattern.compile("\\+[1-9][0-9]{6,14}");
    private static final Pattern SHORT_CODE = Pattern.compile("[0-9]{3,8}");
    /** 3GPP TS 23.040 9.1.2.5 has room for 11 characters. */
    private static final Pattern LETTERS = Pattern.compile("[A-Za-z0-9 ]{1,11}");

    private static final PhoneNumberUtil NUMBERS = PhoneNumberUtil.getInstance();

    /**
     * Whether the address could be somebody's. Its length is compared with what its country has, for a digit too few is the
     * likeliest mistake. Not whether such a number was ever given out: what this library knows of that gets old, and a line
     * must not be turned away for it.
     */
    static Optional<String> complaintAbout(String address) {
        if (!INTERNATIONAL.matcher(address).matches()) {
            return Optional.of("not a phone number in the form +15755550101: " + address);
        }
        return switch (possible(address)) {
            case IS_POSSIBLE -> Optional.empty();
            case INVALID_COUNTRY_CODE -> Optional.of("no country has this code: " + address);
            case TOO_SHORT, IS_POSSIBLE_LOCAL_ONLY -> Optional.of("too few digits for its country: " + address);
            case TOO_LONG -> Optional.of("too many digits for its country: " + address);
            case INVALID_LENGTH -> Optional.of("not as many digits as its country has: " + address);
        };
    }

    /** Of an address that nobody complains about. */
    static SmppAddress to(String address) {
        return new SmppAddress(SMPPConstant.TON_INTERNATIONAL, SMPPConstant.NPI_ISDN, address.substring(1));
    }

    /**
     * Of the sender that the settings name. Type and plan for short codes and letters: common practice, no source. An
     * {@link IllegalArgumentException} for what is none of the three.
     */
    static SmppAddress from(String sender) {
        if (INTERNATIONAL.matcher(sender).matches()) {
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

    /**
     * The international form of a sender that the centre names, for that is how an answer is addressed. What cannot be made
     * one, such as a short code, stays as it is.
     *
     * @param home our own number, if it has a country: a national number is then of the same one
     */
    String international(Optional<String> home) {
        String number = digits.strip();
        if (INTERNATIONAL.matcher(number).matches() || ton == SMPPConstant.TON_ALPHANUMERIC) {
            return number;
        }
        boolean named = INTERNATIONAL.matcher("+" + number).matches();
        if (ton == SMPPConstant.TON_INTERNATIONAL && named) {
            return "+" + number;
        }
        Optional<String> national =
                home.filter(ours -> INTERNATIONAL.matcher(ours).matches()).flatMap(ours -> nationally(number, ours));
        if (ton == SMPPConstant.TON_NATIONAL) {
            return national.orElse(number);
        }
        boolean whole = named && possible("+" + number) == ValidationResult.IS_POSSIBLE;
        return national.orElse(whole ? "+" + number : number);
    }

    private static Optional<String> nationally(String number, String home) {
        try {
            String region = NUMBERS.getRegionCodeForCountryCode(
                    NUMBERS.parse(home, null).getCountryCode());
            PhoneNumber parsed = NUMBERS.parse(number, region);
            return NUMBERS.isPossibleNumberWithReason(parsed) == ValidationResult.IS_POSSIBLE
                    ? Optional.of(NUMBERS.format(parsed, PhoneNumberFormat.E164))
                    : Optional.empty();
        } catch (NumberParseException e) {
            return Optional.empty();
        }
    }

    private static ValidationResult possible(String international) {
        try {
            return NUMBERS.isPossibleNumberWithReason(NUMBERS.parse(international, null));
        } catch (NumberParseException e) {
            return ValidationResult.INVALID_COUNTRY_CODE;
        }
    }
}
