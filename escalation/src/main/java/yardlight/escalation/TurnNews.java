package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.wording.TurnTold;
import yardlight.escalation.wording.Wording;

/**
 * Tells people about turns: that somebody wants one of theirs taken, what became of that, that one changes hands. It wakes
 * nobody and takes no call's place: it goes by the rules of news, waits for the end of quiet hours, and each is a text of its
 * own, for some of them want an answer. It is worded when it happens.
 */
final class TurnNews {

    /** Whoever was not to be reached for so long has seen it on the page, or has nothing from it any more. */
    static final Duration OF_USE = Duration.ofDays(2);

    private static final String ASK = ".ask.";
    private static final String ON = ".on.";
    private static final String OFF = ".off.";

    private final Draft draft;
    private final Notices notices;
    private final Carriers carriers;

    TurnNews(Draft draft, Notices notices) {
        this.draft = draft;
        this.notices = notices;
        this.carriers = new Carriers(draft);
    }

    /** What the question to a contact is called: it is of no use once the offer is not open any more. */
    static String question(String offer, String contact) {
        return offer + ASK + contact;
    }

    /** What the text to somebody who comes on is called: it is of no use once they are not on any more. */
    static String comesOn(String roster, Instant at, String contact) {
        return roster + ON + Long.toString(at.getEpochSecond(), 36) + "." + contact;
    }

    static String goesOff(String roster, Instant at, String contact) {
        return roster + OFF + Long.toString(at.getEpochSecond(), 36) + "." + contact;
    }

    /** Whether it still says something that is so. */
    static boolean ofUse(Draft draft, Notice notice) {
        int ask = notice.id().lastIndexOf(ASK);
        boolean open = ask < 0
                || draft.offer(notice.id().substring(0, ask))
                        .filter(offer -> offer.open(draft.now()))
                        .isPresent();
        int on = notice.id().indexOf(ON);
        boolean stillOn = on < 0
                || draft.setup()
                        .peopleBehind(Rung.ROSTER + notice.id().substring(0, on), draft.now())
                        .contains(notice.contact());
        return open && stillOn && notice.queuedAt().plus(OF_USE).isAfter(draft.now());
    }

    /** Tells one contact, if they are set up and have a line; the same notice only once. */
    void tell(String contact, String id, TurnTold told) {
        Optional<Contact> known = contact(contact).filter(one -> carriers.has(contact, 0));
        if (known.isPresent() && draft.notice(id).isEmpty()) {
            String text = Wording.turn(told, known.get().language());
            offer(
                    known.get(),
                    Notice.other(Purpose.TURN, id, contact, draft.now(), 0).queued(text));
        }
    }

    private void offer(Contact contact, Notice notice) {
        Optional<Instant> quiet = PeopleNow.heldUntil(contact, Priority.LOW, draft.now());
        Instant room = draft.desk(contact.id()).roomForNews(draft.now(), notices.restraint(contact.id()));
        if (quiet.isPresent()) {
            keep(notice, quiet.get(), "quiet hours");
        } else if (!carriers.reach(contact)) {
            keep(notice, draft.now().plus(Carriers.ASK_AGAIN), "no carrier to them works");
        } else if (room.isAfter(draft.now())) {
            keep(notice, room, "their limit of texts");
        } else {
            leave(notice);
            notices.send(notice);
        }
    }

    private void keep(Notice notice, Instant until, String why) {
        Desk desk = draft.desk(notice.contact());
        draft.put(notice.held(until));
        draft.put(desk.with(desk.news().waits(notice.id(), until)));
        draft.log(notice, "held until " + until + ": " + why);
    }

    private void leave(Notice notice) {
        Desk desk = draft.desk(notice.contact());
        draft.put(desk.with(desk.news().without(Set.of(notice.id()))));
    }

    /** The time of something on the contact's tray has come: each goes out, waits on, or has become pointless. */
    void release(String contact) {
        List<Notice> ready = draft.desk(contact).news().waiting().stream()
                .filter(one -> !one.until().isAfter(draft.now()))
                .flatMap(one -> draft.notice(one.notice()).stream())
                .filter(notice -> notice.purpose() == Purpose.TURN && notice.state() == NoticeState.HELD)
                .toList();
        Optional<Contact> known = contact(contact).filter(one -> carriers.has(contact, 0));
        for (Notice notice : ready) {
            if (known.isEmpty() || !draft.wanted(notice)) {
                leave(notice);
                draft.put(notice.as(NoticeState.CANCELLED));
                draft.log(notice, "cancelled: it is over");
            } else {
                offer(known.get(), notice);
            }
        }
    }

    private Optional<Contact> contact(String id) {
        return Optional.ofNullable(draft.setup().contacts().get(id));
    }
}
