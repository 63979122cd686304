package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.SignIn;
import yardlight.escalation.wording.Wellbeing;

/** Everything that can make the engine decide. */
public sealed interface Stimulus {

    /** Each kind is one record, so that a switch over all of them is complete. */
    enum Kind {
        REPORTED(Reported.class),
        MEASURED(Measured.class),
        BEAT(Beat.class),
        ALARM_DUE(AlarmDue.class),
        CALLOUT_DUE(CalloutDue.class),
        DESK_DUE(DeskDue.class),
        NOTICE_DUE(NoticeDue.class),
        BOX_DUE(BoxDue.class),
        GAUGE_DUE(GaugeDue.class),
        ALLS_WELL_DUE(AllsWellDue.class),
        ACKNOWLEDGE(Acknowledge.class),
        ANSWER_NOTICE(AnswerNotice.class),
        SHELVE(Shelve.class),
        UNSHELVE(Unshelve.class),
        RESET(Reset.class),
        NOTICE_FATE(NoticeFate.class),
        OVERDUE(Overdue.class),
        CARRIER(Carrier.class),
        PUT_OFF(PutOff.class),
        TEST_LINE(TestLine.class),
        REPLIED(Replied.class),
        LINK_USED(LinkUsed.class),
        SIGNED_IN(SignedIn.class),
        STOPPED(Stopped.class),
        HANDOVER(Handover.class),
        SHUT_IN(ShutIn.class),
        SWAP(Swap.class),
        SETUP_CHANGED(SetupChanged.class);

        private static final Map<Class<?>, Kind> OF =
                Stream.of(values()).collect(Collectors.toUnmodifiableMap(kind -> kind.type, Function.identity()));

        private final Class<? extends Stimulus> type;

        Kind(Class<? extends Stimulus> type) {
            this.type = type;
        }
    }

    /** Which of them it is. */
    default Kind kind() {
        return Kind.OF.get(getClass());
    }

    /** The same, where it matters that no box could post before this instant; where it does not, itself. */
    default Stimulus openSince(Instant at) {
        return this;
    }

    /** A box said something of its site's points; in one go, so that what is over by the end calls nobody. */
    record Reported(String box, List<Report> reports) implements Stimulus {
        public Reported {
            reports = List.copyOf(reports);
        }
    }

    /** What a box measured; in one go, so that what is over by the end calls nobody. It may be late and out of order. */
    record Measured(String box, List<Reading> readings) implements Stimulus {
        public Measured {
            readings = List.copyOf(readings);
        }
    }

    /** @param open since when every heartbeat was heard: later than the one before if the gateway was away in between */
    record Beat(String box, Heartbeat heartbeat, Instant open) implements Stimulus {
        public Beat(String box, Heartbeat heartbeat) {
            this(box, heartbeat, Instant.EPOCH);
        }

        @Override
        public Stimulus openSince(Instant at) {
            return at.isAfter(open) ? new Beat(box, heartbeat, at) : this;
        }
    }

    record AlarmDue(AlarmKey key) implements Stimulus {}

    record CalloutDue(String callout) implements Stimulus {}

    record DeskDue(String contact) implements Stimulus {}

    /** A carrier that took a notice should have said by now what became of it. */
    record NoticeDue(String notice) implements Stimulus {}

    /** @param open since when the box could post; later than its deadline when time went on without the gateway */
    record BoxDue(String box, Instant open) implements Stimulus {

        /** The box could post all the time. */
        public BoxDue(String box) {
            this(box, Instant.EPOCH);
        }

        @Override
        public Stimulus openSince(Instant at) {
            return at.isAfter(open) ? new BoxDue(box, at) : this;
        }
    }

    /**
     * A point should have been read by now.
     *
     * @param open since when its box could post
     */
    record GaugeDue(Gauge.Key key, Instant open) implements Stimulus {

        /** The box could post all the time. */
        public GaugeDue(Gauge.Key key) {
            this(key, Instant.EPOCH);
        }

        @Override
        public Stimulus openSince(Instant at) {
            return at.isAfter(open) ? new GaugeDue(key, at) : this;
        }
    }

    /**
     * It is time to tell a contact that all is well, or what is not.
     *
     * @param uncovered when nobody would be called, as it was worked out beforehand
     */
    record AllsWellDue(String contact, Optional<Wellbeing.Uncovered> uncovered) implements Stimulus {

        /** Somebody always is, or nobody has looked. */
        public AllsWellDue(String contact) {
            this(contact, Optional.empty());
        }
    }

    /**
     * @param by contact or login of the person
     * @param path how the answer came, for the log: {@code page}, {@code link}, {@code text}
     */
    record Acknowledge(AlarmKey key, String by, String path, Optional<String> note) implements Stimulus {}

    /** The reader of a notice answers it, and with it everything that it was about. */
    record AnswerNotice(String notice, String path) implements Stimulus {}

    record Shelve(AlarmKey key, Duration length, String reason, String by) implements Stimulus {}

    record Unshelve(AlarmKey key, String by) implements Stimulus {}

    record Reset(AlarmKey key, String by) implements Stimulus {}

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
    record Overdue(String notice, int line) implements Stimulus {}

    /**
     * A carrier takes nothing, or takes messages again.
     *
     * @param channel name of the channel
     * @param words what was found, for the log
     */
    record Carrier(String channel, boolean down, String words) implements Stimulus {}

    /**
     * A notice was not taken and is tried again by the same line.
     *
     * @param line the line that was tried
     * @param words the carrier's own
     */
    record PutOff(String notice, int line, String words) implements Stimulus {}

    /**
     * Somebody wants to know whether a line works.
     *
     * @param line its place in the contact's list, from 0 on
     * @param by login of the person
     */
    record TestLine(String contact, int line, String by) implements Stimulus {}

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
    }

    /**
     * Somebody answered by the link in a text.
     *
     * @param line the one line by which that text can have come
     */
    record LinkUsed(String contact, int line) implements Stimulus {}

    /**
     * A contact wants nothing more at an address of theirs, or takes it up again.
     *
     * @param words who said what, for the log
     */
    record Stopped(String contact, String address, boolean stopped, String words) implements Stimulus {}

    /**
     * Somebody signed in with something that is new.
     *
     * @param own the contact to whom the login belongs
     * @param contacts who is told; those that are not in the setup are nobody
     * @param words what happened, for the log
     */
    record SignedIn(SignIn what, Optional<String> own, Set<String> contacts, String words) implements Stimulus {
        public SignedIn {
            contacts = Collections.unmodifiableSet(new TreeSet<>(contacts));
        }
    }

    /** A roster's tour changed hands; the log says who has it now. */
    record Handover(String roster) implements Stimulus {}

    /** Something was said of a site's shutting in, or its time has come. */
    record ShutIn(String site, ShutInSaid said) implements Stimulus {}

    /** Something was said of a turn that somebody wants others to take, or its time is up. */
    record Swap(SwapSaid said) implements Stimulus {}

    /**
     * Somebody who was asked takes a turn of another one.
     *
     * @param offer id of it
     * @param contact who takes it
     */
    record Taking(String offer, String contact) {}

    /**
     * Somebody stored another setup.
     *
     * @param taking what the change is there for, when somebody took a turn: if they may not, the setup stays as it was
     */
    record SetupChanged(Setup setup, String by, Optional<Taking> taking) implements Stimulus {

        /** An edit of the owner's. */
        public SetupChanged(Setup setup, String by) {
            this(setup, by, Optional.empty());
        }
    }
}
