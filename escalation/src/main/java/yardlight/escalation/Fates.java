package yardlight.escalation;

import java.util.Optional;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.setup.Contact;

/** What carriers say of notices: taken, delivered, refused. */
final class Fates {

    private final Draft draft;
    private final Climbs climbs;

    Fates(Draft draft, Climbs climbs) {
        this.draft = draft;
        this.climbs = climbs;
    }

    /** Takes a carrier's word. When the last line of everybody on a rung refuses, the callout moves on at once. */
    Answer take(Stimulus.NoticeFate fate) {
        draft.notice(fate.notice())
                .flatMap(notice -> fate(notice, fate))
                .ifPresent(refused -> refused.callouts().stream()
                        .flatMap(id -> draft.callout(id).stream())
                        .forEach(callout -> climbs.notReached(callout, refused.contact())));
        return new Answer.Done();
    }

    /** Comes back with the notice if no line of its contact is left to try. */
    private Optional<Notice> fate(Notice notice, Stimulus.NoticeFate fate) {
        return switch (fate.fate()) {
            case HANDED_OVER -> settled(notice, NoticeState.HANDED_OVER, fate.detail());
            case DELIVERED -> settled(notice, NoticeState.DELIVERED, fate.detail());
            case REFUSED -> refused(notice, fate.detail());
        };
    }

    private Optional<Notice> settled(Notice notice, NoticeState state, String detail) {
        draft.put(notice.as(state));
        draft.log(notice, state.word().replace('-', ' ') + ": " + detail);
        return Optional.empty();
    }

    private Optional<Notice> refused(Notice notice, String detail) {
        Contact contact = draft.setup().contacts().get(notice.contact());
        boolean another = contact != null && notice.line() + 1 < contact.lines().size();
        if (notice.state() != NoticeState.QUEUED) {
            return Optional.empty();
        }
        Notice after = another ? notice.onLine(notice.line() + 1) : notice.as(NoticeState.REFUSED);
        draft.put(after);
        draft.log(notice, "refused: " + detail + (another ? "; the next line is tried" : "; no line is left"));
        return another ? Optional.empty() : Optional.of(after);
    }
}
