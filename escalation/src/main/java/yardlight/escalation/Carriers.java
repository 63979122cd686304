package yardlight.escalation;

import java.time.Duration;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/**
 * Which carriers are down, and by which line a person can be reached nevertheless. A carrier that is down is an alarm of
 * the gateway's own site; as long as its off-delay runs it is back.
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

    boolean reach(Contact contact) {
        return line(contact, 0).isPresent();
    }

    /** The first of the contact's lines, from this one on, whose carrier is not down. */
    OptionalInt line(Contact contact, int from) {
        return IntStream.range(from, contact.lines().size())
                .filter(line -> !down(contact.lines().get(line).channel()))
                .findFirst();
    }

    /** Whether the contact has another line from this one on, whether or not its carrier is down. */
    boolean has(String contact, int from) {
        return draft.setup().line(contact, from).isPresent();
    }

    /** By which line the notice goes out now; that of a contact who is gone stays where it is. */
    OptionalInt line(Notice notice) {
        Contact contact = draft.setup().contacts().get(notice.contact());
        return contact == null ? OptionalInt.of(notice.line()) : line(contact, notice.line());
    }

    /** Whether the notice is about nothing but the gateway itself: it is no use once what it tells of is over. */
    boolean own(Notice notice) {
        return notice.callouts().stream()
                .flatMap(id -> draft.callout(id).stream())
                .flatMap(callout -> callout.facts().alarms().stream())
                .map(AlarmKey::site)
                .allMatch(Site.GATEWAY::equals);
    }
}
