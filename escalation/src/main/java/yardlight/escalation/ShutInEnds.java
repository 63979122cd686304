package yardlight.escalation;

import java.util.Map;
import java.util.Optional;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.shutin.Consent;
import yardlight.escalation.shutin.Request;
import yardlight.escalation.shutin.RequestState;
import yardlight.escalation.shutin.RequestTrigger;
import yardlight.escalation.shutin.Standing;
import yardlight.escalation.shutin.Terms;

/**
 * How a request to shut in comes to its end, and how the asking is turned on and off. A bad end is an alarm for everybody;
 * {@link Reports#finish} has to follow.
 */
final class ShutInEnds {

    private final Draft draft;
    private final Notices notices;
    private final Reports reports;
    private final ShutInNews news;

    ShutInEnds(Draft draft, Notices notices, Reports reports) {
        this.draft = draft;
        this.notices = notices;
        this.reports = reports;
        this.news = new ShutInNews(draft);
    }

    /**
     * What an event says of a request.
     *
     * @param answers whether it is the site's answer to a request, so that nobody need be called for it
     * @param note what the box has to know
     */
    record Heard(boolean answers, Optional<String> note) {

        static final Heard NOTHING = new Heard(false, Optional.empty());
    }

    /** An event of the site: it may be the answer. */
    Heard heard(Report report) {
        Optional<RequestTrigger> meant = draft.setup()
                .site(report.key().site())
                .flatMap(Site::shutIn)
                .filter(terms -> report.active() && report.key().point().equals(terms.point()))
                .flatMap(terms -> meant(terms, report.key().condition()));
        if (meant.isEmpty()) {
            return Heard.NOTHING;
        }
        Optional<Request> request = draft.standing(report.key().site()).request();
        Optional<String> named = report.request();
        if (named.isPresent() && !named.equals(request.map(Request::id))) {
            return new Heard(false, Optional.of("request " + named.get() + " is not the last one; nothing came of it"));
        }
        boolean before = named.isEmpty()
                && request.filter(one -> report.at().isBefore(one.askedAt())).isPresent();
        Optional<Request> after = request.filter(one -> !before).flatMap(one -> one.after(meant.get(), draft.now()));
        after.ifPresent(one -> end(one, "by " + report.box().orElse("the site")));
        return after.isPresent()
                ? new Heard(true, Optional.empty())
                : new Heard(
                        false,
                        named.map(id -> "request " + id + " is over: "
                                + request.orElseThrow().state().word()));
    }

    private static Optional<RequestTrigger> meant(Terms terms, String condition) {
        if (condition.equals(terms.done())) {
            return Optional.of(RequestTrigger.CONFIRM);
        }
        return condition.equals(terms.refused()) ? Optional.of(RequestTrigger.REFUSE) : Optional.empty();
    }

    Answer due(String site) {
        draft.standing(site)
                .open()
                .flatMap(one -> one.after(RequestTrigger.TIME, draft.now()))
                .ifPresent(one -> end(one, "as nothing was heard in time"));
        reports.finish(site);
        return new Answer.Done();
    }

    /** What came of a try at the relay. */
    Answer tried(String site, ShutInSaid.Tried said) {
        Standing before = draft.standing(site);
        before.request().filter(one -> one.id().equals(said.request())).ifPresent(request -> {
            news.log(request, "relay " + request.through() + ": " + said.words());
            request.after(said.outcome(), draft.now()).ifPresent(next -> {
                if (next.open()) {
                    draft.put(before.with(next));
                } else {
                    end(next, "by relay " + next.through());
                }
                if (next.state() == RequestState.FETCHED && request.state() != RequestState.FETCHED) {
                    news.tell(next, notices);
                }
            });
        });
        reports.finish(site);
        return new Answer.Done();
    }

    private void end(Request ended, String how) {
        String site = site(ended);
        draft.put(draft.standing(site).with(ended));
        news.log(ended, ended.state().word() + " " + how);
        AlarmKey key = ShutInAlarm.at(site);
        boolean failed = ended.state().failed();
        if (failed || draft.alarm(key).active()) {
            reports.report(
                    new Report(
                            key,
                            Optional.empty(),
                            failed,
                            Optional.of(Priority.CRITICAL),
                            Measured.words(ended.state().word() + " " + how),
                            draft.now(),
                            false),
                    Priority.CRITICAL);
        }
        // The call about a confirmation that did not come says just that; of all others there is more to say.
        boolean said = ended.state() == RequestState.UNCONFIRMED
                && draft.alarm(key).state().calls();
        if (!said) {
            news.tell(ended, notices);
        }
    }

    private static String site(Request request) {
        return request.id().substring(0, request.id().indexOf('.'));
    }

    Answer turnOn(String site, ShutInSaid.TurnedOn said) {
        Optional<Terms> terms = draft.setup().site(site).flatMap(Site::shutIn);
        if (terms.filter(one -> one.words().equals(said.terms())).isEmpty()) {
            return new Answer.Refusal("the settings of " + site + " are not those that were read; read them again");
        }
        Standing before = draft.standing(site);
        draft.put(before.with(Optional.of(new Consent(said.terms(), said.by(), draft.now()))));
        log(site, "asking to shut in is turned on by " + said.by() + ": " + said.terms());
        return new Answer.Done();
    }

    Answer turnOff(String site, ShutInSaid.TurnedOff said) {
        turnOff(site, "turned off by " + said.by());
        reports.finish(site);
        return new Answer.Done();
    }

    /** Another setup: who changes how a site is asked, or takes it away, turns it off; so does a copy with other words. */
    void setup(Setup before) {
        for (Site was : before.sites().values()) {
            Optional<Terms> now = draft.setup().site(was.id()).flatMap(Site::shutIn);
            if (was.shutIn().isPresent() && !was.shutIn().equals(now)) {
                turnOff(was.id(), "off now: the site's settings for it were changed or taken away");
                if (draft.setup().site(was.id()).isPresent()) {
                    reports.finish(was.id());
                }
            }
        }
    }

    /** An open request is taken back; who has it already may still do it, and people are told so. */
    private void turnOff(String site, String words) {
        Standing before = draft.standing(site);
        if (before.consent().isPresent()) {
            draft.put(before.with(Optional.empty()));
            log(site, "asking to shut in is " + words);
        }
        before.open()
                .flatMap(one -> one.after(RequestTrigger.WITHDRAW, draft.now()))
                .ifPresent(one -> end(one, "as asking was turned off"));
    }

    private void log(String site, String words) {
        draft.log(Entry.What.SHUT_IN, Map.of("site", site), words);
    }
}
