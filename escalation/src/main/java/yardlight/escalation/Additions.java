package yardlight.escalation;

import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.setup.Contact;

/** What people hear of a callout beside the calls of its ladder, because something was added to it. */
final class Additions {

    private final Draft draft;
    private final Notices notices;
    private final Carriers carriers;

    Additions(Draft draft, Notices notices) {
        this.draft = draft;
        this.notices = notices;
        this.carriers = new Carriers(draft);
    }

    /**
     * More alarms joined. Who was told before hears of them in one text once they are twice as many as that text knew,
     * within their limit even when it is critical; else the ladder's next call says it.
     *
     * @param unheard whether something among them was already on its way to somebody and has been taken back
     */
    Callout.Facts tellMore(Callout.Facts facts, boolean unheard) {
        if (!unheard && facts.alarms().size() < 2 * facts.announced()) {
            return facts;
        }
        return tellAgain(facts, contact -> notices.underWay(facts.id(), contact).isEmpty());
    }

    /** It became worse. Who was told before hears so at once; what waits says so when it goes out, what is on its way does not. */
    Callout.Facts tellWorse(Callout.Facts facts) {
        return tellAgain(
                facts,
                contact -> draft.unsent(facts.id()).stream()
                        .noneMatch(notice -> notice.contact().equals(contact) && notice.state() == NoticeState.HELD));
    }

    /**
     * It is not over. Whoever read last that it is hears so at once; the others wait for the ladder, as they read that it holds. An
     * end is said once to each in a callout, and so is this: what comes and goes must not use up the texts of an hour.
     */
    Callout.Facts tellBack(Callout.Facts facts) {
        return tellAgain(
                facts, contact -> notices.underWay(facts.id(), contact).isEmpty() && readThatItIsOver(facts, contact));
    }

    private boolean readThatItIsOver(Callout.Facts facts, String contact) {
        return draft.notice(facts.id() + News.OVER + contact)
                .filter(news -> news.state() != NoticeState.CANCELLED && news.state() != NoticeState.HELD)
                .filter(news -> IntStream.rangeClosed(1, facts.notices())
                        .mapToObj(number -> draft.notice(facts.id() + "." + number))
                        .flatMap(Optional::stream)
                        .filter(call -> call.contact().equals(contact))
                        .noneMatch(call -> call.written().isAfter(news.written())))
                .isPresent();
    }

    private Callout.Facts tellAgain(Callout.Facts facts, Predicate<String> unaware) {
        Callout.Facts after = draft.announced(facts);
        for (String contact : facts.told()) {
            if (unaware.test(contact) && carriers.has(contact, 0)) {
                after = after.withOneMoreNotice();
                notices.join(notices.make(after, contact));
            }
        }
        return after;
    }

    /** Somebody whom the ladder need not call may want to know; not while they sleep. */
    Callout.Facts tellToo(Callout.Facts facts, String contact) {
        Optional<Contact> awake = Optional.ofNullable(draft.setup().contacts().get(contact))
                .filter(known -> carriers.has(contact, 0))
                .filter(known -> PeopleNow.heldUntil(known, facts.priority(), draft.now())
                        .isEmpty())
                .filter(known -> notices.underWay(facts.id(), contact).isEmpty());
        if (awake.isEmpty()) {
            return facts;
        }
        Callout.Facts after = facts.withOneMoreNotice();
        notices.join(notices.make(after, contact));
        return Notices.reached(after, Set.of(contact));
    }
}
