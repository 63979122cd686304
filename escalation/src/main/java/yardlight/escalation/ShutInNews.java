package yardlight.escalation;

import java.time.Duration;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Site;
import yardlight.escalation.shutin.Request;
import yardlight.escalation.shutin.RequestState;
import yardlight.escalation.wording.ShutInTold;
import yardlight.escalation.wording.Wording;

/** Tells the people on a site's ladder how a request to shut in stands: each step once, and nothing holds it back. */
final class ShutInNews {

    /** Later than this a text about a step would only mislead. */
    static final Duration OF_USE = Duration.ofHours(4);

    private static final String SEPARATOR = ".shut-in.";

    private final Draft draft;

    ShutInNews(Draft draft) {
        this.draft = draft;
    }

    /** What a new request of the site is called: the site, and when it was asked, to the millisecond. */
    static String name(String site, long millis) {
        return site + SEPARATOR + Long.toString(millis, 36);
    }

    void tell(Request request, Notices notices) {
        String site = site(request.id());
        var carriers = new Carriers(draft);
        for (String contact : OnLadder.now(draft, site)) {
            String id = request.id() + "." + request.state().word() + "." + contact;
            if (carriers.has(contact, 0) && draft.notice(id).isEmpty()) {
                notices.send(Notice.shutIn(id, contact, draft.now()));
            }
        }
    }

    void log(Request request, String words) {
        draft.log(
                Entry.What.SHUT_IN,
                Map.of("site", site(request.id()), "request", request.id()),
                "shut-in request " + request.id() + " " + words);
    }

    /** What a notice says is in its name: a later step does not change what was to be told of an earlier one. */
    String write(Notice notice, Language language) {
        String site = site(notice.id());
        String[] parts =
                notice.id().substring(site.length() + SEPARATOR.length()).split("\\.");
        String request = site + SEPARATOR + parts[0];
        Optional<Request> asked =
                draft.standing(site).request().filter(one -> one.id().equals(request));
        return Wording.shutIn(
                new ShutInTold(
                        draft.setup().site(site).orElseGet(() -> new Site(site, site, ZoneOffset.UTC, "")),
                        RequestState.of(parts[1]),
                        asked.map(Request::asker).map(asker -> asker.kind()),
                        asked.map(one -> name(one.asker().by())).orElse(""),
                        notice.queuedAt()),
                language);
    }

    private String name(String by) {
        return Optional.ofNullable(draft.setup().contacts().get(by))
                .map(Contact::name)
                .orElse(by);
    }

    private static String site(String id) {
        return id.substring(0, id.indexOf(SEPARATOR));
    }
}
