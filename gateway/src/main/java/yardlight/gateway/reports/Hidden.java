package yardlight.gateway.reports;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Line;
import yardlight.gateway.page.Masks;

/**
 * A carrier's words without the address that it repeats. A report is passed on to people who have no login here, so it
 * hides addresses from everybody, whoever made it.
 */
final class Hidden {

    private static final Pattern MAIL = Pattern.compile("(?<![*\\w.+-])[\\w.+-]+@[\\w-]+(?:\\.[\\w-]+)+");
    private static final Pattern NUMBER = Pattern.compile("\\d{8,}");

    private Hidden() {}

    /** @param contact to whom it was said; empty when they are no longer set up, and then only mail addresses are known */
    static String of(String words, Optional<Contact> contact) {
        String hidden = words;
        for (Line line : contact.map(Contact::lines).orElse(java.util.List.of())) {
            hidden = number(hidden.replace(line.address(), Masks.of(line.address())), line.address());
        }
        return MAIL.matcher(hidden).replaceAll(found -> Matcher.quoteReplacement(Masks.of(found.group())));
    }

    /** The number alone, as a centre of messages repeats it. */
    private static String number(String words, String address) {
        Matcher digits = NUMBER.matcher(address);
        return digits.find() ? words.replace(digits.group(), Masks.of(digits.group())) : words;
    }
}
