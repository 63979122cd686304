package yardlight.escalation;

import java.util.Optional;
import yardlight.escalation.swap.Part;
import yardlight.escalation.swap.SwapDay;

/** What can be said of a turn that somebody wants others to take, besides that somebody takes it: that is an edit of the setup. */
public sealed interface SwapSaid {

    enum Kind {
        ASKED,
        ASKED_FOR,
        DECLINED,
        WITHDRAWN,
        DUE
    }

    Kind kind();

    /** Somebody wants the others to be asked, for a day that they named. */
    record Asked(String contact, SwapDay day) implements SwapSaid {
        @Override
        public Kind kind() {
            return Kind.ASKED;
        }
    }

    /**
     * The same for a part of a turn that was picked on a page.
     *
     * @param by login of whoever picked it; empty when it is the contact
     */
    record AskedFor(String contact, String roster, Part part, Optional<String> by) implements SwapSaid {
        @Override
        public Kind kind() {
            return Kind.ASKED_FOR;
        }
    }

    record Declined(String offer, String contact) implements SwapSaid {
        @Override
        public Kind kind() {
            return Kind.DECLINED;
        }
    }

    /** @param by contact or login */
    record Withdrawn(String offer, String by) implements SwapSaid {
        @Override
        public Kind kind() {
            return Kind.WITHDRAWN;
        }
    }

    /** Its time is up. */
    record Due(String offer) implements SwapSaid {
        @Override
        public Kind kind() {
            return Kind.DUE;
        }
    }
}
