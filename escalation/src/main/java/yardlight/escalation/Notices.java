package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.quiet.Restraint;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.wording.Links;
import yardlight.escalation.wording.Wellbeing;

/** What reaches a person: at once, after quiet hours, or together with other things once their limit allows. */
final class Notices {

    /** The desk and the callout are due together, but one of them is first. */
    private static final Duration JUST_NOW = Duration.ofMinutes(1);

    /** What the desk sends together within this time is not taken out of it and sent one by one. */
    static final Duration MOMENT = Duration.ofSeconds(5);

    private final Draft draft;
    private final Texts texts;
    private final Carriers carriers;
    private final SharedFeeds feeds;
    private final News news;
    private final Additions additions;

    /** @param uncovered as in {@link Texts} */
    Notices(Draft draft, Links links, Optional<Wellbeing.Uncovered> uncovered) {
        this.draft = draft;
        this.texts = new Texts(draft, links, uncovered);
        this.carriers = new Carriers(draft);
        this.feeds = new SharedFeeds(draft);
        this.news = new News(draft, this);
        this.additions = new Additions(draft, this);
    }

    News news() {
        return news;
    }

    Additions additions() {
        return additions;
    }

    /** Calls these contacts. Who has a notice of this callout under way gets no second one. */
    Callout.Facts tell(Callout.Facts facts, Collection<String> people) {
        Callout.Facts after = facts;
        for (String contact : people) {
            Optional<Notice> underWay = underWay(after.id(), contact);
            if (underWay.isEmpty() && !comesFromDesk(after, contact)) {
                after = after.withOneMoreNotice();
                call(make(after, contact), facts.told().isEmpty());
            } else if (underWay.filter(notice -> mayInterrupt(notice, facts)).isPresent()) {
                unhold(underWay.get());
                call(again(underWay.get(), after), false);
            } else {
                underWay.filter(notice -> notice.state() == NoticeState.QUEUED).ifPresent(this::anew);
            }
        }
        return draft.announced(reached(after, people));
    }

    /** The contact is called again, and still not reached: their best line may take it by now. */
    private void anew(Notice notice) {
        carriers.line(notice.onLine(0)).ifPresent(line -> {
            if (line < notice.line()) {
                draft.put(notice.onLine(line));
                draft.log(notice, "tried again from line " + (line + 1));
            }
        });
    }

    /** Makes the notices that wait for the end of quiet hours, one for each contact that has none yet. */
    Callout.Facts hold(Callout.Facts facts, Map<String, Instant> held) {
        Callout.Facts after = facts;
        for (Map.Entry<String, Instant> one : held.entrySet()) {
            if (!facts.held().containsKey(one.getKey())
                    && underWay(after.id(), one.getKey()).isEmpty()) {
                after = after.withOneMoreNotice();
                keep(make(after, one.getKey()), one.getValue(), "quiet hours");
            }
        }
        var all = new TreeMap<>(after.held());
        all.putAll(held);
        return after.withReached(after.told(), all);
    }

    /** The callout is over: nothing that is still unsent goes out. */
    void over(Callout callout, boolean answered) {
        for (Notice notice : draft.unsent(callout.id())) {
            boolean others = notice.callouts().stream()
                    .filter(id -> !id.equals(callout.id()))
                    .anyMatch(draft::wanted);
            if (!others) {
                unhold(notice);
                draft.put(notice.as(NoticeState.CANCELLED));
                draft.log(notice, "cancelled: it is over");
            }
        }
        if (answered) {
            callout.facts()
                    .told()
                    .forEach(contact -> draft.put(draft.desk(contact).answered(callout.id())));
        }
    }

    /** One more text about something that is called for already. */
    void join(Notice notice) {
        Contact contact = draft.setup().contacts().get(notice.contact());
        Optional<Instant> quiet =
                contact == null ? Optional.empty() : PeopleNow.heldUntil(contact, notice.priority(), draft.now());
        if (quiet.isPresent()) {
            keep(notice, quiet.get(), "quiet hours");
        } else {
            offer(notice, look(notice.contact()).room(notice.priority(), draft.now(), restraint(notice.contact())));
        }
    }

    private void call(Notice notice, boolean first) {
        String contact = notice.contact();
        String callout = notice.callouts().get(0);
        Instant room = look(contact).roomFor(callout, notice.priority(), draft.now(), restraint(contact));
        Optional<Instant> gathers = feeds.gathersUntil(notice, first);
        if (gathers.filter(room::isBefore).isPresent()) {
            keep(notice, gathers.get(), "other sites may have lost the same feed");
            look(contact);
        } else {
            offer(notice, room);
        }
    }

    private void offer(Notice notice, Instant room) {
        if (room.isAfter(draft.now())) {
            keep(notice, room, "their limit of texts");
        } else {
            send(notice);
        }
        look(notice.contact());
    }

    /** The contact's desk, and whether a flood begins or ends there now: looked at only while all that waits lies on it. */
    Desk look(String contact) {
        Desk desk = draft.desk(contact);
        Desk looked = desk.looked(draft.now(), restraint(contact).flood());
        if (looked.flood() != desk.flood()) {
            draft.put(looked);
        }
        return looked;
    }

    void send(Notice notice) {
        carriers.line(notice).ifPresentOrElse(line -> send(notice, line), () -> keepForCarrier(notice));
    }

    /** Puts it into the outbox for this line and no other, worded as things stand now. */
    void send(Notice notice, int line) {
        Notice worded = notice.onLine(line).queued(texts.write(notice));
        boolean call = notice.purpose() == Purpose.CALL;
        Notice queued = call ? news.carry(worded) : worded;
        draft.put(queued);
        Desk desk = draft.desk(notice.contact());
        draft.put(
                switch (notice.purpose()) {
                    case CALL -> desk.sends(draft.now(), notice.callouts());
                    case NEWS, SIGN_IN, TURN -> desk.sendsNews(draft.now());
                    case ALLS_WELL, TEST, SHUT_IN -> desk.sendsAside(draft.now());
                });
        draft.log(queued, "queued: " + queued.text());
        if (call) {
            notice.callouts()
                    .forEach(id -> draft.callout(id).ifPresent(callout -> announce(callout, notice.contact())));
        }
    }

    private void announce(Callout callout, String contact) {
        boolean calling = callout.kind() == Callout.Kind.CALLING;
        Callout.Facts facts = calling ? reached(callout.facts(), Set.of(contact)) : callout.facts();
        draft.put(callout.with(draft.announced(facts)));
    }

    void keep(Notice notice, Instant until, String why) {
        draft.put(notice.held(until));
        draft.put(draft.desk(notice.contact()).waits(notice.id(), until));
        draft.log(notice, "held until " + until + ": " + why);
    }

    /** Until a carrier is back; the contact's limit of texts counts once more by then. */
    void keepForCarrier(Notice notice) {
        keep(notice, draft.now().plus(Carriers.ASK_AGAIN), "no carrier to them works");
    }

    /** No line of the contact is left: it is told to nobody. */
    void refuse(Notice notice, String why) {
        unhold(notice);
        draft.put(notice.as(NoticeState.REFUSED));
        draft.log(notice, "refused: " + why + "; no line is left");
    }

    private void unhold(Notice notice) {
        draft.put(draft.desk(notice.contact()).without(Set.of(notice.id())));
    }

    /** Whether a notice waits for something that no longer keeps it: it became more urgent, or quiet hours were changed. */
    private boolean mayInterrupt(Notice waiting, Callout.Facts facts) {
        boolean slept = facts.held().containsKey(waiting.contact());
        return waiting.heldUntil().filter(draft.now().plus(MOMENT)::isBefore).isPresent()
                && (slept || facts.priority().compareTo(waiting.priority()) > 0);
    }

    /** Whether the contact's quiet hours have just ended, so that the desk sends what it held. */
    private boolean comesFromDesk(Callout.Facts facts, String contact) {
        Instant until = facts.held().get(contact);
        return until != null
                && !until.isAfter(draft.now())
                && until.plus(JUST_NOW).isAfter(draft.now());
    }

    /** Whose quiet hours are over has been told by the desk. */
    Callout.Facts awake(Callout.Facts facts) {
        Set<String> awake = facts.held().entrySet().stream()
                .filter(one -> !one.getValue().isAfter(draft.now()))
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
        return reached(facts, awake);
    }

    Optional<Notice> underWay(String callout, String contact) {
        return draft.unsent(callout).stream()
                .filter(notice -> notice.contact().equals(contact))
                .findFirst();
    }

    static Callout.Facts reached(Callout.Facts facts, Collection<String> people) {
        var told = new TreeSet<>(facts.told());
        told.addAll(people);
        var held = new TreeMap<>(facts.held());
        held.keySet().removeAll(new HashSet<>(people));
        return facts.withReached(told, held);
    }

    Restraint restraint(String contact) {
        Contact known = draft.setup().contacts().get(contact);
        return Restraint.perHour(known == null ? 1 : known.textsPerHour());
    }

    Notice make(Callout.Facts facts, String contact) {
        return Notice.made(
                facts.id() + "." + facts.notices(), contact, List.of(facts.id()), facts.priority(), draft.now());
    }

    /** The same notice once more, with all that it was about: it may be a bundle that waits for a carrier. */
    private Notice again(Notice waiting, Callout.Facts facts) {
        return Notice.made(
                waiting.id(),
                waiting.contact(),
                waiting.callouts(),
                waiting.priority().orHigher(facts.priority()),
                draft.now());
    }
}
