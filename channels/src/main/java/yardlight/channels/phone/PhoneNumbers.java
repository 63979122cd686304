package yardlight.channels.phone;

import com.google.i18n.phonenumbers.NumberParseException;
import com.google.i18n.phonenumbers.PhoneNumberUtil;
import com.google.i18n.phonenumbers.PhoneNumberUtil.PhoneNumberFormat;
import com.google.i18n.phonenumbers.PhoneNumberUtil.ValidationResult;
import com.google.i18n.phonenumbers.Phonenumber.PhoneNumber;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Numbers in the international form of ITU-T E.164, {@code +15755550101}: a plus and at most 15 digits, the country's code
 * first. It is the form of a line's address.
 */
public final class PhoneNumbers {

    private static final Pattern INTERNATIONAL = Pattern.compile("\\+[1-9][0-9]{6,14}");

    private static final PhoneNumberUtil NUMBERS = PhoneNumberUtil.getInstance();

    /** What a carrier says of a number beside its digits. */
    public enum Kind {
        /** The country's code comes first. */
        INTERNATIONAL,
        /** It lacks its country's code. */
        NATIONAL,
        /** Letters. */
        NAME,
        /** The carrier does not say. */
        UNKNOWN
    }

    private PhoneNumbers() {}

    /** Whether it has that form, of any length that E.164 allows. */
    public static boolean isInternational(String number) {
        return INTERNATIONAL.matcher(number).matches();
    }

    /**
     * Whether the address could be somebody's. Its length is compared with what its country has, for a digit too few is the
     * likeliest mistake. Not whether such a number was ever given out: what this library knows of that gets old, and a line
     * must not be turned away for it.
     */
    public static Optional<String> complaintAbout(String address) {
        if (!isInternational(address)) {
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

    /**
     * The international form of a sender that the carrier names, for that is how an answer is addressed. What cannot be made
     * one, such as a short code, stays as it is.
     *
     * @param digits with or without a plus
     * @param home our own number, if it has a country: a national number is then of the same one
     */
    public static String international(Kind kind, String digits, Optional<String> home) {
        String number = digits.strip();
        if (isInternational(number) || kind == Kind.NAME) {
            return number;
        }
        boolean named = isInternational("+" + number);
        if (kind == Kind.INTERNATIONAL && named) {
            return "+" + number;
        }
        Optional<String> national =
                home.filter(PhoneNumbers::isInternational).flatMap(ours -> nationally(number, ours));
        if (kind == Kind.NATIONAL) {
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
