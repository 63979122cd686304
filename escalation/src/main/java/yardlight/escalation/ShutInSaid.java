package yardlight.escalation;

import yardlight.escalation.shutin.Asker;
import yardlight.escalation.shutin.RequestTrigger;

/** What can be said of a site's shutting in, besides what the site itself says by its events. */
public sealed interface ShutInSaid {

    enum Kind {
        DUE,
        ASKED,
        WISHED,
        CODE,
        TRY,
        TRIED,
        TURNED_ON,
        TURNED_OFF
    }

    Kind kind();

    /** The time of the site's request has come. */
    record Due() implements ShutInSaid {
        @Override
        public Kind kind() {
            return Kind.DUE;
        }
    }

    /** Somebody wants it, and has said so for sure. */
    record Asked(Asker asker) implements ShutInSaid {
        @Override
        public Kind kind() {
            return Kind.ASKED;
        }
    }

    /**
     * Somebody wants it by text, and has yet to send back a code.
     *
     * @param code of six digits, drawn by whoever asks
     */
    record Wished(String contact, String address, int code) implements ShutInSaid {
        @Override
        public Kind kind() {
            return Kind.WISHED;
        }
    }

    /** The code came back. There is one try: a wrong one ends the wish. */
    record Code(String contact, String address, int code) implements ShutInSaid {
        @Override
        public Kind kind() {
            return Kind.CODE;
        }
    }

    /** Somebody is about to send it to the relay, if they are told to. */
    record Try(String request) implements ShutInSaid {
        @Override
        public Kind kind() {
            return Kind.TRY;
        }
    }

    /**
     * What came of it.
     *
     * @param outcome {@code TAKE}, {@code NOT_TAKEN}, {@code UNKNOWN} or {@code REFUSE}
     * @param words the relay's own
     */
    record Tried(String request, RequestTrigger outcome, String words) implements ShutInSaid {
        @Override
        public Kind kind() {
            return Kind.TRIED;
        }
    }

    /**
     * The owner turns it on.
     *
     * @param terms as the owner read them
     */
    record TurnedOn(String terms, String by) implements ShutInSaid {
        @Override
        public Kind kind() {
            return Kind.TURNED_ON;
        }
    }

    record TurnedOff(String by) implements ShutInSaid {
        @Override
        public Kind kind() {
            return Kind.TURNED_OFF;
        }
    }
}
