package yardlight.gateway.page;

import java.util.Optional;
import yardlight.escalation.setup.Site;
import yardlight.escalation.shutin.Asker;
import yardlight.escalation.shutin.Request;
import yardlight.escalation.shutin.RequestState;
import yardlight.escalation.shutin.Standing;

/** How a site stands with being asked to shut in, in words. */
public record ShutInWords(Tongue tongue, Names names, Clockface clock) {

    /** One line for the pages of the site and its alarms; empty where the setup does not say how it is asked. */
    public String brief(Optional<Site> site, Standing standing) {
        return site.flatMap(Site::shutIn)
                .map(terms -> standing.open()
                        .map(this::request)
                        .orElseGet(() -> tongue.say(standing.on(terms) ? "shutin.on" : "shutin.off")))
                .orElse("");
    }

    /** How a request stands and since when: {@code The box has it since 2:14 AM; it has not confirmed yet.} */
    public String request(Request request) {
        String at = clock.read(request.endedAt()
                .or(() -> request.takenAt().filter(any -> request.state() == RequestState.FETCHED))
                .orElse(request.askedAt()));
        return tongue.say("shutin.state." + request.state().word(), at);
    }

    /** Who asked, and when. */
    public String asked(Request request) {
        Asker asker = request.asker();
        String by = asker.kind().person() ? names.contact(asker.by()) : asker.by();
        return tongue.say("shutin.asked." + asker.kind().word(), by, clock.read(request.askedAt()));
    }
}
