package yardlight.gateway.dispatch;

import java.util.Optional;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Line;
import yardlight.gateway.lane.CurrentSetup;

/** By which line a notice goes, as the setup is now. */
record Lines(CurrentSetup setup) {

    /** Empty when the contact or the line is gone. */
    Optional<Line> of(Notice notice) {
        Contact contact = setup.setup().contacts().get(notice.contact());
        return contact == null || notice.line() >= contact.lines().size()
                ? Optional.empty()
                : Optional.of(contact.lines().get(notice.line()));
    }
}
