package yardlight.gateway.dispatch;

import java.util.Optional;
import java.util.function.Supplier;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Setup;

/** By which line a notice goes, as the setup is now. */
record Lines(Supplier<Setup> setup) {

    /** Empty when the contact or the line is gone. */
    Optional<Line> of(Notice notice) {
        return setup.get().line(notice.contact(), notice.line());
    }
}
