package yardlight.escalation;

import java.util.OptionalInt;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.setup.Contact;

/** What carriers say of notices: taken, delivered, refused, or nothing at all. */
final class Fates {

    private final Draft draft;
    private final Climbs climbs;
    private final Carriers carriers;

    Fates(Draft draft, Climbs climbs) {
        this.draft = draft;
        this.climbs = climbs;
        this.carriers = new Carriers(draft);
    }

    /** Takes a carrier's word. When the last line of everybody on a rung refuses, the callout moves on at once. */
    Answer take(Stimulus.NoticeFate fate) {
        draft.notice(fate.notice()).ifPresent(notice -> take(notice, fate));
        return new Answer.Done();
    }

    private void take(Notice notice, Stimulus.NoticeFate fate) {
        new Proofs(draft).heard(notice, fate);
        // What was taken is taken, by whichever line; the rest is no news once another line is tried.
        boolean current = notice.state() == NoticeState.QUEUED && notice.line() == fate.line();
        switch (fate.fate()) {
            case HANDED_OVER -> settled(notice, NoticeState.HANDED_OVER, fate.detail());
            case DELIVERED -> settled(notice, NoticeState.DELIVERED, fate.detail());
            case REFUSED -> {
                boolean takenBack = notice.state() == NoticeState.HANDED_OVER && notice.line() == fate.line();
                if (current || takenBack && draft.wanted(notice)) {
                    refused(notice, "refused: " + fate.detail());
                } else if (takenBack) {
                    settled(notice, NoticeState.REFUSED, fate.detail());
                }
            }
            case UNCERTAIN -> {
                if (current) {
                    uncertain(notice, fate.detail());
                }
            }
        }
    }

    /** Nobody took it in time. The next line is tried without waiting for the rung; where there is none it stays. */
    Answer overdue(Stimulus.Overdue said) {
        draft.notice(said.notice())
                .filter(notice -> notice.state() == NoticeState.QUEUED && notice.line() == said.line())
                .ifPresent(notice -> next(notice).ifPresent(line -> onto(line, notice, "not handed over in time")));
        return new Answer.Done();
    }

    private void settled(Notice notice, NoticeState state, String detail) {
        draft.put(notice.as(state));
        draft.log(notice, state.word().replace('-', ' ') + ": " + detail);
    }

    private void refused(Notice notice, String words) {
        OptionalInt next = next(notice);
        if (next.isPresent()) {
            onto(next.getAsInt(), notice, words);
        } else {
            draft.put(notice.as(NoticeState.REFUSED));
            draft.log(notice, words + (hasMore(notice) ? "; no other carrier to them works" : "; no line is left"));
            notice.callouts()
                    .forEach(
                            id -> draft.callout(id).ifPresent(callout -> climbs.notReached(callout, notice.contact())));
        }
    }

    private void uncertain(Notice notice, String words) {
        OptionalInt next = next(notice);
        if (next.isPresent()) {
            onto(next.getAsInt(), notice, words);
        } else {
            settled(notice, NoticeState.HANDED_OVER, words);
        }
    }

    private void onto(int line, Notice notice, String why) {
        draft.put(notice.onLine(line).as(NoticeState.QUEUED));
        draft.log(notice, why + "; the next line is tried");
    }

    private OptionalInt next(Notice notice) {
        return hasMore(notice) ? carriers.line(notice.onLine(notice.line() + 1)) : OptionalInt.empty();
    }

    private boolean hasMore(Notice notice) {
        Contact contact = draft.setup().contacts().get(notice.contact());
        return contact != null
                && notice.purpose() != Purpose.TEST
                && notice.line() + 1 < contact.lines().size();
    }
}
