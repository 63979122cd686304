package yardlight.escalation;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.setup.Contact;

/** Clears a contact's desk: what waited there goes out together once quiet hours end or the limit has room. */
final class Desks {

    private final Draft draft;
    private final Notices notices;

    Desks(Draft draft, Notices notices) {
        this.draft = draft;
        this.notices = notices;
    }

    /** What waited on a contact's desk goes out, in one message, unless it is over by now or has to wait on. */
    Answer release(String contact) {
        Desk before = notices.look(contact);
        List<Notice> ready = new ArrayList<>();
        for (String id : before.ready(draft.now())) {
            draft.put(draft.desk(contact).without(Set.of(id)));
            draft.notice(id)
                    .filter(notice -> notice.state() == NoticeState.HELD)
                    .ifPresent(notice -> {
                        if (notice.purpose() == Purpose.SHUT_IN && draft.wanted(notice)) {
                            notices.send(notice);
                        } else if (notice.callouts().stream().anyMatch(draft::wanted)) {
                            ready.add(notice);
                        } else {
                            draft.put(notice.as(NoticeState.CANCELLED));
                            draft.log(notice, "cancelled: it is over");
                        }
                    });
        }
        List<Notice> free =
                ready.stream().filter(notice -> !waitsOn(notice, before)).toList();
        if (free.size() == 1) {
            notices.send(free.get(0));
        } else if (!free.isEmpty()) {
            bundle(contact, free);
        }
        new SignIns(draft, notices).release(contact);
        new TurnNews(draft, notices).release(contact);
        notices.news().release(contact);
        notices.look(contact);
        return new Answer.Done();
    }

    private void bundle(String contact, List<Notice> held) {
        draft.put(draft.desk(contact).oneMoreBundle());
        Set<String> callouts = new LinkedHashSet<>();
        held.stream()
                .sorted(Comparator.comparing(Notice::priority).reversed().thenComparing(Notice::id))
                .forEach(notice -> callouts.addAll(notice.callouts()));
        Priority worst = held.stream().map(Notice::priority).reduce(Priority.LOW, Priority::orHigher);
        var bundle = Notice.made(
                contact + ".together." + draft.desk(contact).bundles(),
                contact,
                List.copyOf(callouts),
                worst,
                draft.now());
        held.forEach(notice -> {
            draft.put(notice.bundledInto(bundle.id()));
            draft.log(notice, "bundled into " + bundle.id());
        });
        notices.send(bundle);
    }

    /** A held notice whose time has come may have to wait again: for a carrier, for other quiet hours, for their limit. */
    private boolean waitsOn(Notice notice, Desk before) {
        Contact contact = draft.setup().contacts().get(notice.contact());
        Optional<Instant> quiet =
                contact == null ? Optional.empty() : PeopleNow.heldUntil(contact, notice.priority(), draft.now());
        Instant room = before.room(notice.priority(), draft.now(), notices.restraint(notice.contact()));
        Instant until = quiet.orElse(room);
        if (new Carriers(draft).line(notice).isEmpty()) {
            notices.keepForCarrier(notice);
            return true;
        }
        boolean waits = until.isAfter(draft.now());
        if (waits) {
            notices.keep(notice, until, quiet.isPresent() ? "quiet hours" : "their limit of texts");
        }
        return waits;
    }
}
