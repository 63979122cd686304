package yardlight.escalation;

import java.time.Instant;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.setup.Contact;

/** What becomes of a notice whose line is of no use any more before it has gone out by it. */
final class Detours {

    private static final Set<Purpose> NEWS = Set.of(Purpose.NEWS, Purpose.SIGN_IN, Purpose.TURN);

    private final Draft draft;
    private final Climbs climbs;
    private final Notices notices;
    private final Carriers carriers;

    Detours(Draft draft, Climbs climbs, Notices notices) {
        this.draft = draft;
        this.climbs = climbs;
        this.notices = notices;
        this.carriers = new Carriers(draft);
    }

    /**
     * Another line takes the notice, the first better one last. Without any it waits for a carrier, and others are called
     * meanwhile; where there is none to wait for it is refused.
     *
     * @param why for the log: {@code sms-mail is down}
     */
    void take(Notice notice, String why) {
        Contact contact = draft.setup().contacts().get(notice.contact());
        if (contact == null) {
            return;
        }
        if (notice.purpose() == Purpose.TEST) {
            draft.put(notice.as(NoticeState.REFUSED));
            draft.log(notice, "refused: " + why + ", and a test goes by no other line");
            return;
        }
        OptionalInt after = carriers.line(contact, notice.line());
        OptionalInt other = after.isPresent() ? after : carriers.line(contact, 0);
        if (other.isPresent()) {
            draft.put(notice.onLine(other.getAsInt()));
            draft.log(notice, why + "; the next line is tried");
        } else if (notice.purpose() == Purpose.ALLS_WELL) {
            AllsWells.putOff(draft, notice);
        } else if (NEWS.contains(notice.purpose())) {
            notices.news().putOff(notice);
        } else if (!carriers.has(contact.id(), 0)) {
            notices.refuse(notice, why);
            callouts(notice, callout -> climbs.notReached(callout, notice.contact()));
        } else if (carriers.own(notice)) {
            draft.put(notice.as(NoticeState.CANCELLED));
            draft.log(notice, "cancelled: " + why + ", and so nobody is told by it");
            callouts(notice, callout -> climbs.notReached(callout, notice.contact()));
        } else {
            notices.keepForCarrier(notice.onLine(0));
            Instant until = draft.now().plus(Carriers.ASK_AGAIN);
            callouts(notice, callout -> climbs.notNow(callout, notice.contact(), until));
        }
    }

    private void callouts(Notice notice, Consumer<Callout> then) {
        notice.callouts().forEach(id -> draft.callout(id).ifPresent(then));
    }
}
