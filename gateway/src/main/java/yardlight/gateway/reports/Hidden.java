package yardlight.gateway.reports;

import java.util.List;
import java.util.Optional;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Line;
import yardlight.gateway.page.Masks;

/**
 * A carrier's words without the address that it repeats. A report is passed on to people who have no login here, so it
 * hides addresses from everybody, whoever made it.
 */
final class Hidden {

    private Hidden() {}

    /** @param contact to whom it was said; empty when they are no longer set up, and then only mail addresses are known */
    static String of(String words, Optional<Contact> contact) {
        String hidden = words;
        for (Line line : contact.map(Contact::lines).orElse(List.of())) {
            hidden = Masks.in(hidden, line.address());
        }
        return Masks.mails(hidden);
    }
}
