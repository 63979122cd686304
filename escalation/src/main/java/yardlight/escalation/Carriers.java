package yardlight.escalation;

import java.time.Duration;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Stop;

/**
 * Which carriers are down, and by which line a person can be reached nevertheless. A carrier that is down is an alarm of
 * the gateway's own site; as long as its off-delay runs it is back. A line that was stopped is none.
 */
final class Carriers {

    /** Whoever cannot be reached by any line is asked for again after this time, and as soon as a carrier is back. */
    static final Duration ASK_AGAIN = Duration.ofMinutes(5);

    private final Draft draft;

    Carriers(Draft draft) {
        this.draft = draft;
    }

    /** Whether the notice is to be sent by this channel now. */
    static boolean queued(Setup setup, Notice notice, String channel) {
        return notice.state() == NoticeState.QUEUED
                && setup.line(notice.contact(), notice.line())
                        .filter(line -> line.channel().equals(channel))
                        .isPresent();
    }

    boolean down(String channel) {
        return draft.alarm(Setup.carrier(channel)).reported();
    }

    /** Whether the contact wants nothing more by this line of theirs. */
    boolean stopped(Contact contact, Line line) {
        return !draft.stops().isEmpty() && draft.stops().contains(Stop.key(contact.id(), line.address()));
    }

    boolean reach(Contact contact) {
        return line(contact, 0).isPresent();
    }

    /** The first of the contact's lines, from this one on, that may be used and whose carrier is not down. */
    OptionalInt line(Contact contact, int from) {
        return usable(contact, from)
                .filter(line -> !down(contact.lines().get(line).channel()))
                .findFirst();
    }

    /** Whether the contact has a line from this one on that may be used, whether or not its carrier is down. */
    boolean has(String contact, int from) {
        Contact known = draft.setup().contacts().get(contact);
        return known != null && usable(known, from).findAny().isPresent();
    }

    private IntStream usable(Contact contact, int from) {
        return IntStream.range(from, contact.lines().size())
                .filter(line -> !stopped(contact, contact.lines().get(line)));
    }

    /** By which line the notice goes out now; that of a contact who is gone stays where it is. */
    OptionalInt line(Notice notice) {
        Contact contact = draft.setup().contacts().get(notice.contact());
        return contact == null ? OptionalInt.of(notice.line()) : line(contact, notice.line());
    }

    /** Whether the notice is about nothing but carriers: it is no use once what it tells of is over. */
    boolean own(Notice notice) {
        return !notice.callouts().isEmpty()
                && notice.callouts().stream()
                        .flatMap(id -> draft.callout(id).stream())
                        .flatMap(callout -> callout.facts().alarms().stream())
                        .allMatch(Setup::isCarrier);
    }
}
