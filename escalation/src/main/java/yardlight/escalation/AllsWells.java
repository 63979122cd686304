package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.proof.AllsWell;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;

/**
 * Tells people at the time that they chose that all is well, or what is not: one text for each time on their schedule.
 * They sit and wait for it, so neither quiet hours nor their limit hold it back.
 */
final class AllsWells {

    /** Later than this after its time it would only mislead: whoever missed it has asked by now. */
    static final Duration OF_USE = Duration.ofHours(4);

    /** From here on it says that it is late. */
    static final Duration LATE = Duration.ofMinutes(10);

    /** After a time without the gateway the boxes get this long to be heard, or to be found silent. */
    private static final Duration LISTENS = Duration.ofMinutes(5);

    private final Draft draft;
    private final Notices notices;

    AllsWells(Draft draft, Notices notices) {
        this.draft = draft;
        this.notices = notices;
    }

    /** Another setup: whose schedule is new or another one is told at its next time, and who has none is not told any more. */
    static void setup(Draft draft, Setup before) {
        Set<String> contacts = new LinkedHashSet<>(before.contacts().keySet());
        contacts.addAll(draft.setup().contacts().keySet());
        for (String contact : contacts) {
            Optional<AllsWell> schedule = schedule(draft.setup(), contact);
            Desk desk = draft.desk(contact);
            boolean same = schedule.equals(schedule(before, contact))
                    && schedule.isPresent() == desk.allsWell().isPresent();
            if (!same) {
                draft.put(desk.tellsNext(
                        schedule.map(one -> one.after(draft.now())).map(at -> new Desk.AllsWellAt(at, at))));
            }
        }
    }

    private static Optional<AllsWell> schedule(Setup setup, String contact) {
        return Optional.ofNullable(setup.contacts().get(contact)).flatMap(Contact::allsWell);
    }

    /** No carrier takes it now: it is written anew in a while, as things stand then. */
    static void putOff(Draft draft, Notice notice) {
        draft.put(notice.as(NoticeState.CANCELLED));
        draft.log(notice, "cancelled: no carrier to them works; written anew soon");
        putOff(draft, notice.contact(), notice.queuedAt(), Carriers.ASK_AGAIN);
    }

    private static void putOff(Draft draft, String contact, Instant due, Duration wait) {
        var next = new Desk.AllsWellAt(due, draft.now().plus(wait));
        draft.put(draft.desk(contact).tellsNext(Optional.of(next)));
    }

    /** The time of a contact's all's-well has come. Asked for once more it does nothing: the next one is planned. */
    Answer due(String contact) {
        Optional<Desk.AllsWellAt> next =
                draft.desk(contact).allsWell().filter(one -> !one.at().isAfter(draft.now()));
        Optional<AllsWell> schedule = schedule(draft.setup(), contact);
        if (next.isPresent() && schedule.isPresent()) {
            due(
                    draft.setup().contacts().get(contact),
                    schedule.get(),
                    next.get().due());
        } else if (next.isPresent()) {
            draft.put(draft.desk(contact).tellsNext(Optional.empty()));
        }
        return new Answer.Done();
    }

    private void due(Contact contact, AllsWell schedule, Instant planned) {
        Instant latest = schedule.latest(draft.now());
        Instant due = latest.isAfter(planned) ? latest : planned;
        Duration late = Duration.between(due, draft.now());
        var carriers = new Carriers(draft);
        if (due.isAfter(planned)) {
            log(contact, "all's-well of " + planned + " was missed");
        }
        if (late.compareTo(OF_USE) >= 0) {
            log(contact, "all's-well of " + due + " was missed: it is too late to send it");
            plan(contact, schedule);
        } else if (!carriers.has(contact.id(), 0)) {
            log(contact, "all's-well of " + due + " is left out: they want nothing more by any line");
            plan(contact, schedule);
        } else if (carriers.line(contact, 0).isEmpty()) {
            log(contact, "all's-well of " + due + " waits: no carrier to them works");
            putOff(draft, contact.id(), due, Carriers.ASK_AGAIN);
        } else if (late.compareTo(LATE) > 0 && new SitesNow(draft).undecided()) {
            log(contact, "all's-well of " + due + " is late and waits until the boxes had time to be heard");
            putOff(draft, contact.id(), due, LISTENS);
        } else {
            tell(contact, due);
            plan(contact, schedule);
        }
    }

    /** Its name is made of its time, so there is one for each, also after the clock was set back. */
    private void tell(Contact contact, Instant due) {
        String id = contact.id() + ".well." + Long.toString(due.getEpochSecond(), 36);
        boolean told = draft.notice(id)
                .filter(before -> before.state() != NoticeState.CANCELLED)
                .isPresent();
        if (!told) {
            notices.send(Notice.other(Purpose.ALLS_WELL, id, contact.id(), due, 0));
        }
    }

    private void plan(Contact contact, AllsWell schedule) {
        Instant at = schedule.after(draft.now());
        draft.put(draft.desk(contact.id()).tellsNext(Optional.of(new Desk.AllsWellAt(at, at))));
    }

    private void log(Contact contact, String words) {
        draft.log(Entry.What.NOTICE, Map.of("contact", contact.id()), words);
    }
}
