package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.wording.Wording;

/**
 * Tells people by a text that somebody signed in with something new. It wakes nobody and takes no call's place: it lies on
 * the tray for news, waits for the end of quiet hours, and several of them are one text. Unlike news it is worded when it
 * happens, and stays true.
 */
final class SignIns {

    /** Whoever was not to be reached for that long has been on a page since, which says it too. */
    static final Duration OF_USE = Duration.ofDays(7);

    private final Draft draft;
    private final Notices notices;
    private final Carriers carriers;

    SignIns(Draft draft, Notices notices) {
        this.draft = draft;
        this.notices = notices;
        this.carriers = new Carriers(draft);
    }

    Answer take(Stimulus.SignedIn said) {
        draft.log(Entry.What.LOGIN, Map.of("person", said.what().login()), said.words());
        said.contacts().stream()
                .flatMap(id -> contact(id).stream())
                .filter(contact -> carriers.has(contact.id(), 0))
                .filter(contact -> !draft.desk(contact.id()).news().full())
                .forEach(contact -> tell(said, contact));
        return new Answer.Done();
    }

    private void tell(Stimulus.SignedIn said, Contact contact) {
        boolean own = said.own().equals(Optional.of(contact.id()));
        String text = Wording.signIn(said.what(), own, draft.now(), contact.zone(), contact.language());
        Notice notice = Notice.other(Purpose.SIGN_IN, id(contact, said.what().login()), contact.id(), draft.now(), 0)
                .queued(text);
        Instant until = draft.now().plus(News.GATHERS);
        keep(notice, until);
        draft.log(notice, "held until " + until + ": a sign-in waits for more");
    }

    /** Two of one login in one second are two. */
    private String id(Contact contact, String login) {
        String id =
                contact.id() + ".in." + login + "." + Long.toString(draft.now().getEpochSecond(), 36);
        return draft.notice(id).isEmpty()
                ? id
                : id + "-" + draft.desk(contact.id()).news().waiting().size();
    }

    private void keep(Notice notice, Instant until) {
        Desk desk = draft.desk(notice.contact());
        draft.put(notice.held(until));
        draft.put(desk.with(desk.news().waits(notice.id(), until)));
    }

    /** The time of something on the contact's tray has come: all sign-ins go out in one text, or wait on. */
    void release(String contact) {
        if (!draft.desk(contact).news().ready(draft.now())) {
            return;
        }
        List<Notice> waiting = draft.desk(contact).news().waiting().stream()
                .flatMap(one -> draft.notice(one.notice()).stream())
                .filter(notice -> notice.purpose() == Purpose.SIGN_IN && notice.state() == NoticeState.HELD)
                .toList();
        List<Notice> wanted = waiting.stream().filter(draft::wanted).toList();
        Optional<Contact> known = contact(contact).filter(one -> carriers.has(contact, 0));
        waiting.stream()
                .filter(notice -> known.isEmpty() || !wanted.contains(notice))
                .forEach(this::drop);
        if (known.isPresent() && !wanted.isEmpty()) {
            tell(known.get(), wanted);
        }
    }

    private void tell(Contact contact, List<Notice> waiting) {
        Optional<Instant> quiet = PeopleNow.heldUntil(contact, Priority.LOW, draft.now());
        Instant room = draft.desk(contact.id()).roomForNews(draft.now(), notices.restraint(contact.id()));
        if (quiet.isPresent()) {
            waiting.forEach(notice -> keep(notice, quiet.get()));
            waiting.forEach(notice -> draft.log(notice, "held until " + quiet.get() + ": quiet hours"));
        } else if (!carriers.reach(contact)) {
            waiting.forEach(notice -> keep(notice, draft.now().plus(Carriers.ASK_AGAIN)));
        } else if (room.isAfter(draft.now())) {
            waiting.forEach(notice -> keep(notice, room));
        } else {
            waiting.forEach(this::leave);
            notices.send(waiting.size() == 1 ? waiting.get(0) : bundle(contact, waiting));
        }
    }

    /** The newest is told, and how many there were besides. */
    private Notice bundle(Contact contact, List<Notice> waiting) {
        Desk desk = draft.desk(contact.id()).oneMoreBundle();
        draft.put(desk);
        String newest = waiting.get(waiting.size() - 1).text();
        Notice all = Notice.other(Purpose.SIGN_IN, contact.id() + ".in." + desk.bundles(), contact.id(), draft.now(), 0)
                .queued(Wording.signIns(newest, waiting.size() - 1, contact.language()));
        waiting.forEach(notice -> {
            draft.put(notice.bundledInto(all.id()));
            draft.log(notice, "bundled into " + all.id());
        });
        return all;
    }

    private void drop(Notice notice) {
        leave(notice);
        draft.put(notice.as(NoticeState.CANCELLED));
        draft.log(notice, "cancelled: no line to them is left, or it is too long ago");
    }

    private void leave(Notice notice) {
        Desk desk = draft.desk(notice.contact());
        draft.put(desk.with(desk.news().without(Set.of(notice.id()))));
    }

    private Optional<Contact> contact(String id) {
        return Optional.ofNullable(draft.setup().contacts().get(id));
    }
}
