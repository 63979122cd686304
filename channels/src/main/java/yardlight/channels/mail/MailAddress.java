package yardlight.channels.mail;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What passes for a mail address: one, plain, ASCII, {@code local@domain}.
 *
 * <p>Narrower than RFC 5321 on purpose: no quotes, comments, groups, source routes or address literals, so that nothing
 * but an address can hide in it. Lengths are those of RFC 5321 4.5.3.1: 64 for the local part, 254 for the whole (a path
 * of 256 less its angle brackets).
 */
final class MailAddress {

    private static final int LONGEST = 254;
    private static final String ATOM = "[A-Za-z0-9!#$%&'*+/=?^_`{|}~-]+";
    private static final String LABEL = "[A-Za-z0-9](?:[A-Za-z0-9-]{0,61}[A-Za-z0-9])?";
    private static final Pattern PLAIN =
            Pattern.compile("(?=[^@]{1,64}@)" + ATOM + "(?:\\." + ATOM + ")*@" + LABEL + "(?:\\." + LABEL + ")*");

    private MailAddress() {}

    static Optional<String> complaintAbout(String address) {
        if (address.length() <= LONGEST && PLAIN.matcher(address).matches()) {
            return Optional.empty();
        }
        return Optional.of("not one plain mail address: " + address);
    }

    /** What stands behind the at sign of an address that nobody complains about. */
    static String domainOf(String address) {
        return address.substring(address.lastIndexOf('@') + 1);
    }
}
