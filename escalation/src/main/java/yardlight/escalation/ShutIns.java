package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Site;
import yardlight.escalation.shutin.Asker;
import yardlight.escalation.shutin.Request;
import yardlight.escalation.shutin.RequestState;
import yardlight.escalation.shutin.RequestTrigger;
import yardlight.escalation.shutin.Standing;
import yardlight.escalation.shutin.Terms;
import yardlight.escalation.shutin.Wish;

/**
 * Asks a site to shut in, and hands the request over. How it ends is for {@link ShutInEnds}. There is one open request for a
 * site; whoever asks again joins it.
 */
final class ShutIns {

    /** For how long the code that was sent to a line may come back. */
    private static final Duration WISH = Duration.ofMinutes(5);

    /** The time to overflow stays short for a while: it asks no more often than this. */
    private static final Duration AGAIN = Duration.ofHours(1);

    /** A try at the relay is over by then; none begins when the request expires earlier. */
    static final Duration TRY = Duration.ofSeconds(10);

    private static final Duration BETWEEN_TRIES = Duration.ofSeconds(10);

    private final Draft draft;
    private final Notices notices;
    private final ShutInNews news;

    ShutIns(Draft draft, Notices notices) {
        this.draft = draft;
        this.notices = notices;
        this.news = new ShutInNews(draft);
    }

    /** The terms by which the site may be asked; empty while that is not turned on. */
    static Optional<Terms> on(Situation now, String site) {
        return now.setup()
                .site(site)
                .flatMap(Site::shutIn)
                .filter(terms -> now.standing(site).on(terms));
    }

    /** Whether it would be of use to ask the site by itself: it may be asked, and has not said that it is shut in already. */
    static boolean wanted(Situation now, String site) {
        return on(now, site)
                .filter(terms -> !(now.standing(site)
                                .request()
                                .filter(one -> one.state() == RequestState.CONFIRMED)
                                .isPresent()
                        && now.alarm(new AlarmKey(site, terms.point(), terms.done()))
                                .active()))
                .isPresent();
    }

    /** A rung asks: nobody has answered so far. */
    void ask(Callout.Facts facts) {
        ask(facts.site(), new Asker(Asker.Kind.LADDER, facts.alarms().get(0).local()));
    }

    /**
     * A tank's time to overflow, to be called with each new forecast.
     *
     * @param left until it runs over
     */
    void lastCall(AlarmKey tank, Duration left) {
        String site = tank.site();
        boolean due = on(draft, site)
                .flatMap(Terms::lastCall)
                .filter(least -> left.compareTo(least) < 0)
                .isPresent();
        boolean lately = draft.standing(site)
                .request()
                .filter(one -> one.askedAt().plus(AGAIN).isAfter(draft.now()))
                .isPresent();
        if (due && !lately && wanted(draft, site)) {
            ask(site, new Asker(Asker.Kind.LAST_CALL, tank.local()));
        }
    }

    Answer ask(String site, Asker asker) {
        Optional<Terms> terms = on(draft, site);
        if (terms.isEmpty()) {
            return off(site);
        }
        Standing before = draft.standing(site);
        if (before.open().isPresent()) {
            Request open = before.open().get();
            news.log(open, "is asked for again by " + asker.words() + ": it is open already");
            return new Answer.Asked(open, true);
        }
        Request request =
                Request.made(ShutInNews.name(site, draft.now().toEpochMilli()), terms.get(), asker, draft.now());
        draft.put(before.with(request));
        news.log(
                request,
                "asked for by " + asker.words() + "; goes to " + request.way().word() + " " + request.through()
                        + ", expires " + request.expiresAt());
        news.tell(request, notices);
        return new Answer.Asked(request, false);
    }

    private static Answer off(String site) {
        return new Answer.Refusal("asking to shut in is not turned on for " + site);
    }

    /** Somebody has asked by text: they get a code, and it counts once that comes back. */
    Answer wish(String site, ShutInSaid.Wished wished) {
        if (on(draft, site).isEmpty()) {
            return off(site);
        }
        if (!OnLadder.ever(draft.setup(), site).contains(wished.contact())) {
            return new Answer.Refusal(wished.contact() + " is not on the ladder of " + site);
        }
        Instant until = draft.now().plus(WISH);
        draft.put(draft.standing(site)
                .wishing(Optional.of(new Wish(wished.contact(), wished.address(), wished.code(), until))));
        log(site, wished.contact() + " asks by text to shut in; their line gets a code, to come back before " + until);
        return new Answer.Done();
    }

    Answer code(String site, ShutInSaid.Code said) {
        Standing before = draft.standing(site);
        boolean granted = before.wish()
                .filter(wish -> wish.grantedBy(said.contact(), said.address(), said.code(), draft.now()))
                .isPresent();
        draft.put(before.wishing(Optional.empty()));
        if (granted) {
            return ask(site, new Asker(Asker.Kind.TEXT, said.contact()));
        }
        log(
                site,
                said.contact() + " sent back another code than the one they were sent, or too late: nothing was done");
        return new Answer.Done();
    }

    /** The answer to a heartbeat: with it goes the open request, if it is for that box; also when it went with one before. */
    Answer offer(String id, Answer answer) {
        Box box = draft.setup().boxes().get(id);
        Optional<Site> site = box == null ? Optional.empty() : draft.setup().site(box.site());
        if (site.flatMap(Site::shutIn).isEmpty()) {
            return answer;
        }
        Standing before = draft.standing(box.site());
        Optional<Request> given = before.open()
                .filter(one -> one.way() == Terms.Way.BOX && one.through().equals(id))
                .flatMap(one -> one.after(RequestTrigger.TAKE, draft.now()));
        if (given.isEmpty()) {
            return answer;
        }
        boolean again = before.request().equals(given);
        draft.put(before.with(given.get()));
        news.log(given.get(), "goes to box " + id + (again ? " once more" : "") + " with the answer to its heartbeat");
        if (!again) {
            news.tell(given.get(), notices);
        }
        return new Answer.Offered(given.get());
    }

    /** Somebody would send it to the relay now: they may when nobody else does, and it cannot expire on the way. */
    Answer attempt(String site, ShutInSaid.Try said) {
        Standing before = draft.standing(site);
        Optional<Request> tried = before.open()
                .filter(one -> one.id().equals(said.request()) && one.way() == Terms.Way.RELAY)
                .filter(one -> draft.now().plus(TRY).isBefore(one.expiresAt()))
                .filter(this::rested)
                .flatMap(one -> one.after(RequestTrigger.TRY, draft.now()));
        tried.ifPresent(one -> {
            draft.put(before.with(one));
            news.log(one, "is sent to relay " + one.through());
        });
        return tried.<Answer>map(Answer.Offered::new).orElseGet(Answer.Done::new);
    }

    private boolean rested(Request request) {
        Duration pause = request.state() == RequestState.TRYING ? TRY.plus(BETWEEN_TRIES) : BETWEEN_TRIES;
        return request.triedAt()
                .filter(at -> draft.now().isBefore(at.plus(pause)))
                .isEmpty();
    }

    private void log(String site, String words) {
        draft.log(Entry.What.SHUT_IN, Map.of("site", site), words);
    }
}
