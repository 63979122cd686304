package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.setup.Setup;

/** Everything that can make the engine decide. */
public sealed interface Stimulus {

    enum Kind {
        REPORTED,
        BEAT,
        ALARM_DUE,
        CALLOUT_DUE,
        DESK_DUE,
        NOTICE_DUE,
        BOX_DUE,
        ALLS_WELL_DUE,
        ACKNOWLEDGE,
        ANSWER_NOTICE,
        SHELVE,
        UNSHELVE,
        RESET,
        NOTICE_FATE,
        OVERDUE,
        CARRIER,
        PUT_OFF,
        TEST_LINE,
        REPLIED,
        LINK_USED,
        STOPPED,
        HANDOVER,
        SETUP_CHANGED
    }

    Kind kind();

    /** A box said something of its site's points; in one go, so that what is over by the end calls nobody. */
    record Reported(String box, List<Report> reports) implements Stimulus {
        public Reported {
            reports = List.copyOf(reports);
        }

        @Override
        public Kind kind() {
            return Kind.REPORTED;
        }
    }

    /** @param open since when every heartbeat was heard: later than the one before if the gateway was away in between */
    record Beat(String box, Heartbeat heartbeat, Instant open) implements Stimulus {
        public Beat(String box, Heartbeat heartbeat) {
            this(box, heartbeat, Instant.EPOCH);
        }

        @Override
        public Kind kind() {
            return Kind.BEAT;
        }
    }

    record AlarmDue(AlarmKey key) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.ALARM_DUE;
        }
    }

    record CalloutDue(String callout) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.CALLOUT_DUE;
        }
    }

    record DeskDue(String contact) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.DESK_DUE;
        }
    }

    /** A carrier that took a notice should have said by now what became of it. */
    record NoticeDue(String notice) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.NOTICE_DUE;
        }
    }

    /**
     * @param open since when the box could post; later than its deadline when time went on without the gateway
     */
    record BoxDue(String box, Instant open) implements Stimulus {

        /** The box could post all the time. */
        public BoxDue(String box) {
            this(box, Instant.EPOCH);
        }

        @Override
        public Kind kind() {
            return Kind.BOX_DUE;
        }
    }

    /** It is time to tell a contact that all is well, or what is not. */
    record AllsWellDue(String contact) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.ALLS_WELL_DUE;
        }
    }

    /**
     * @param by contact or login of the person
     * @param path how the answer came, for the log: {@code page}, {@code link}, {@code text}
     */
    record Acknowledge(AlarmKey key, String by, String path, Optional<String> note) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.ACKNOWLEDGE;
        }
    }

    /** The reader of a notice answers it, and with it everything that it was about. */
    record AnswerNotice(String notice, String path) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.ANSWER_NOTICE;
        }
    }

    record Shelve(AlarmKey key, Duration length, String reason, String by) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.SHELVE;
        }
    }

    record Unshelve(AlarmKey key, String by) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.UNSHELVE;
        }
    }

    record Reset(AlarmKey key, String by) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.RESET;
        }
    }

    /**
     * A carrier said what became of a notice.
     *
     * @param line the line by which it was sent
     * @param receiptWithin for how long a carrier that took it may keep what became of it to itself; empty when it says
     *     nothing later
     */
    record NoticeFate(String notice, int line, Fate fate, String detail, Optional<Duration> receiptWithin)
            implements Stimulus {

        /** Nothing more is expected to be said. */
        public NoticeFate(String notice, int line, Fate fate, String detail) {
            this(notice, line, fate, detail, Optional.empty());
        }

        @Override
        public Kind kind() {
            return Kind.NOTICE_FATE;
        }
    }

    /** What became of an attempt, as far as the rules care. */
    enum Fate {
        HANDED_OVER,
        DELIVERED,
        /** This line does not take it and never will. */
        REFUSED,
        /** It was sent twice and no answer came: the line may have taken it or not. */
        UNCERTAIN
    }

    /**
     * A notice is still on our hands although its time is up.
     *
     * @param line the line that it was waiting for
     */
    record Overdue(String notice, int line) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.OVERDUE;
        }
    }

    /**
     * A carrier takes nothing, or takes messages again.
     *
     * @param channel name of the channel
     * @param words what was found, for the log
     */
    record Carrier(String channel, boolean down, String words) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.CARRIER;
        }
    }

    /**
     * A notice was not taken and is tried again by the same line.
     *
     * @param line the line that was tried
     * @param words the carrier's own
     */
    record PutOff(String notice, int line, String words) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.PUT_OFF;
        }
    }

    /**
     * Somebody wants to know whether a line works.
     *
     * @param line its place in the contact's list, from 0 on
     * @param by login of the person
     */
    record TestLine(String contact, int line, String by) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.TEST_LINE;
        }
    }

    /**
     * A contact said that they have it.
     *
     * @param lines places of the lines whose address the reply came from
     * @param codes the numbers in it
     */
    record Replied(String contact, List<Integer> lines, List<Integer> codes) implements Stimulus {
        public Replied {
            lines = List.copyOf(lines);
            codes = List.copyOf(codes);
        }

        @Override
        public Kind kind() {
            return Kind.REPLIED;
        }
    }

    /**
     * Somebody answered by the link in a text.
     *
     * @param line the one line by which that text can have come
     */
    record LinkUsed(String contact, int line) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.LINK_USED;
        }
    }

    /**
     * A contact wants nothing more at an address of theirs, or takes it up again.
     *
     * @param words who said what, for the log
     */
    record Stopped(String contact, String address, boolean stopped, String words) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.STOPPED;
        }
    }

    /** A roster's tour changed hands; the log says who has it now. */
    record Handover(String roster) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.HANDOVER;
        }
    }

    /** The owner stored another setup. */
    record SetupChanged(Setup setup, String by) implements Stimulus {
        @Override
        public Kind kind() {
            return Kind.SETUP_CHANGED;
        }
    }
}
