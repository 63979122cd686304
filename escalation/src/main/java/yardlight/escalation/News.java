package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.wording.Tiding;
import yardlight.escalation.wording.Wording;

/**
 * Tells those who were called what became of it: that another one has it, and that it is over. It is the least of all texts: it
 * goes along with a call, or alone, all of it in one text; and what it says is looked up when it goes out.
 */
final class News {

    /**
     * What is back within this time was not over, what comes of one cause comes within it, and a call that goes out takes it
     * along. As long as a chattering alarm has to be over before it counts as over.
     */
    static final Duration GATHERS = Duration.ofMinutes(2);

    /** Longer than a night: whoever was left alone for longer than that has looked by themselves. */
    static final Duration OF_USE = Duration.ofHours(12);

    private static final String TAKEN = ".taken.";
    static final String OVER = ".over.";

    private final Draft draft;
    private final Notices notices;
    private final Tidings tidings;
    private final Carriers carriers;

    News(Draft draft, Notices notices) {
        this.draft = draft;
        this.notices = notices;
        this.tidings = new Tidings(draft);
        this.carriers = new Carriers(draft);
    }

    /** Somebody answered: the others who were called hear of it. */
    void taken(Callout callout, String by) {
        callout.facts().told().stream()
                .filter(contact -> !contact.equals(by))
                .forEach(contact -> put(callout, callout.id() + TAKEN + contact, contact));
    }

    /**
     * An alarm returned. If nothing of its callout holds any more, those who were called hear of it; once, also if it comes
     * and goes on.
     */
    void over(AlarmKey key) {
        draft.alarm(key)
                .callout()
                .flatMap(draft::callout)
                .filter(callout ->
                        callout.facts().alarms().stream().map(draft::alarm).noneMatch(Alarm::active))
                .ifPresent(callout -> callout.facts().told().stream()
                        .filter(contact -> draft.notice(callout.id() + OVER + contact)
                                .filter(before -> before.state() != NoticeState.CANCELLED)
                                .isEmpty())
                        .forEach(contact -> put(callout, callout.id() + OVER + contact, contact)));
    }

    private void put(Callout callout, String id, String contact) {
        if (carriers.has(contact, 0) && !draft.desk(contact).news().full()) {
            Instant until = draft.now().plus(GATHERS);
            Priority priority = callout.facts().priority();
            Notice news = Notice.news(id, contact, List.of(callout.id()), priority, draft.now());
            keep(news, until);
            draft.log(news, "held until " + until + ": news waits for more");
        }
    }

    /** It waits for a carrier again. */
    void putOff(Notice news) {
        keep(news, draft.now().plus(Carriers.ASK_AGAIN));
    }

    private void keep(Notice news, Instant until) {
        Desk desk = draft.desk(news.contact());
        draft.put(news.held(until));
        draft.put(desk.with(desk.news().waits(news.id(), until)));
    }

    private List<Notice> waiting(String contact) {
        return draft.desk(contact).news().waiting().stream()
                .flatMap(one -> draft.notice(one.notice()).stream())
                .filter(news -> news.purpose() == Purpose.NEWS && news.state() == NoticeState.HELD)
                .toList();
    }

    private void leave(Notice news) {
        leave(news.contact(), news.id());
    }

    private void leave(String contact, String news) {
        Desk desk = draft.desk(contact);
        draft.put(desk.with(desk.news().without(Set.of(news))));
    }

    /** What waits is not sent: it is told another way, or it is true no longer. */
    private void drop(Notice news, String why) {
        leave(news);
        draft.put(news.as(NoticeState.CANCELLED));
        draft.log(news, "cancelled: " + why);
    }

    private void bundle(Notice news, String into) {
        leave(news);
        draft.put(news.bundledInto(into));
        draft.log(news, "bundled into " + into);
    }

    /** It lies on the tray until a carrier has taken the call that took it along. */
    private void goesWith(Notice call, Notice news) {
        bundle(news, call.id());
        later(news);
    }

    private void later(Notice news) {
        Desk desk = draft.desk(news.contact());
        draft.put(desk.with(desk.news().waits(news.id(), draft.now().plus(GATHERS))));
    }

    private static Notice afresh(Notice news) {
        return Notice.news(news.id(), news.contact(), news.callouts(), news.priority(), news.queuedAt());
    }

    private void lookAfter(String contact, String id) {
        Optional<Notice> news = draft.notice(id);
        NoticeState state = news.map(Notice::state).orElse(NoticeState.CANCELLED);
        if (state == NoticeState.BUNDLED) {
            lookAfter(news.get());
        } else if (state != NoticeState.HELD) {
            leave(contact, id);
        }
    }

    /** The call that took it along may have been taken back before it went out. */
    private void lookAfter(Notice news) {
        NoticeState call =
                news.bundledInto().flatMap(draft::notice).map(Notice::state).orElse(NoticeState.CANCELLED);
        switch (call) {
            case QUEUED -> later(news);
            case HANDED_OVER, DELIVERED -> leave(news);
            case HELD, BUNDLED, REFUSED, CANCELLED -> draft.put(afresh(news).held(draft.now()));
        }
    }

    /** No line to the contact is left. */
    void forget(String contact) {
        waiting(contact).forEach(news -> drop(news, "no line to them is left"));
    }

    /** A call that goes out says what it is about, and takes along what there is room for. */
    Notice carry(Notice call) {
        if (draft.desk(call.contact()).news().waiting().isEmpty()) {
            return call;
        }
        List<String> said = call.callouts().stream().filter(draft::wanted).toList();
        Notice text = call;
        boolean first = true;
        for (Notice news : waiting(call.contact())) {
            if (said.containsAll(news.callouts())) {
                goesWith(call, news);
                continue;
            }
            Optional<Notice> more = draft.desk(call.contact()).flood() ? Optional.empty() : with(text, news, first);
            if (more.isPresent()) {
                text = more.get();
                first = false;
                goesWith(call, news);
                told(news);
            }
        }
        return text;
    }

    private Optional<Notice> with(Notice call, Notice news, boolean first) {
        List<Tiding> all = tidings.of(news);
        Optional<Contact> contact = contact(call.contact());
        return contact.isEmpty() || all.size() != 1 || objection(news).isPresent()
                ? Optional.empty()
                : Wording.also(call.text(), all.get(0), first, contact.get().language())
                        .map(call::queued);
    }

    /** The time of some of a contact's news has come: all of it goes out in one text, or waits on. */
    void release(String contact) {
        if (!draft.desk(contact).news().ready(draft.now())) {
            return;
        }
        draft.desk(contact).news().waiting().forEach(one -> lookAfter(contact, one.notice()));
        List<Notice> free = new ArrayList<>();
        for (Notice news : waiting(contact)) {
            Optional<String> objection = objection(news);
            Optional<Instant> quiet = quiet(news);
            if (objection.isPresent()) {
                drop(news, objection.get());
            } else if (quiet.isPresent()) {
                keep(news, quiet.get());
                draft.log(news, "held until " + quiet.get() + ": quiet hours");
            } else {
                free.add(news);
            }
        }
        if (!free.isEmpty()) {
            tell(contact, free);
        }
    }

    private void tell(String contact, List<Notice> free) {
        boolean reach = contact(contact).filter(carriers::reach).isPresent();
        Instant room = draft.desk(contact).roomForNews(draft.now(), notices.restraint(contact));
        if (!reach || room.isAfter(draft.now())) {
            free.forEach(news -> keep(news, reach ? room : draft.now().plus(Carriers.ASK_AGAIN)));
            return;
        }
        free.forEach(this::told);
        if (free.size() == 1) {
            leave(free.get(0));
            notices.send(free.get(0));
        } else {
            Desk desk = draft.desk(contact).oneMoreBundle();
            draft.put(desk);
            var callouts = new LinkedHashSet<String>();
            free.forEach(news -> callouts.addAll(news.callouts()));
            Priority worst = free.stream().map(Notice::priority).reduce(Priority.LOW, Priority::orHigher);
            Notice all = Notice.news(
                    contact + ".news." + desk.bundles(), contact, List.copyOf(callouts), worst, draft.now());
            free.forEach(news -> bundle(news, all.id()));
            notices.send(all);
        }
    }

    /** Who reads that it is over waits for nothing: if an alarm of the callout is back, that is new to them. */
    private void told(Notice news) {
        news.callouts().stream()
                .filter(id -> news.id().startsWith(id + OVER))
                .flatMap(id -> draft.callout(id).stream())
                .filter(callout -> callout.live() || callout.kind() == Callout.Kind.ENDED)
                .forEach(callout -> draft.put(callout.with(callout.facts().announcing(false))));
    }

    /** Why this is not to be said, or not any more. */
    private Optional<String> objection(Notice news) {
        List<Tiding> all = tidings.of(news);
        boolean over = news.callouts().stream().anyMatch(id -> news.id().startsWith(id + OVER));
        if (!news.queuedAt().plus(OF_USE).isAfter(draft.now())) {
            return Optional.of("it is no news any more");
        }
        if (!carriers.has(news.contact(), 0)) {
            return Optional.of("no line to them is left");
        }
        if (all.isEmpty() || over && all.stream().anyMatch(one -> one.over().isEmpty())) {
            return Optional.of("it is not so any more");
        }
        return tidings.reached(news) ? Optional.empty() : Optional.of("no text about it had gone out to them");
    }

    /** Until when it would wake them: whoever had a text about it within the hour may be awake because of it, others sleep. */
    private Optional<Instant> quiet(Notice news) {
        boolean late = news.callouts().stream()
                .anyMatch(id -> draft.desk(news.contact()).toldOfLate(id, draft.now()));
        return contact(news.contact())
                .flatMap(known -> PeopleNow.heldUntil(known, late ? news.priority() : Priority.LOW, draft.now()));
    }

    private Optional<Contact> contact(String id) {
        return Optional.ofNullable(draft.setup().contacts().get(id));
    }
}
