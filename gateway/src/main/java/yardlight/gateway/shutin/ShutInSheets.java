package yardlight.gateway.shutin;

import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import yardlight.channels.http.Relay;
import yardlight.db.shutin.ShutIns;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.shutin.Request;
import yardlight.escalation.shutin.Standing;
import yardlight.escalation.shutin.Terms;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.ShutInWords;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** Makes the page of what is known. */
@Component
class ShutInSheets {

    private final SetupInForce inForce;
    private final ShutIns shutIns;
    private final Set<String> relays;
    private final InstantSource clock;

    ShutInSheets(SetupInForce inForce, ShutIns shutIns, ObjectProvider<Relay> relays, InstantSource clock) {
        this.inForce = inForce;
        this.shutIns = shutIns;
        this.relays = relays.stream().map(Relay::name).collect(Collectors.toSet());
        this.clock = clock;
    }

    /** @throws Problem 404 when the site does not stand in the setup */
    ShutInSheet of(String id, Tongue tongue) {
        Setup setup = inForce.setup();
        Site site =
                Optional.ofNullable(setup.sites().get(id)).orElseThrow(() -> Problem.notFound("there is no such site"));
        Standing standing = shutIns.of(id);
        Optional<Terms> terms = site.shutIn();
        var words =
                new ShutInWords(tongue, new Names(setup), new Clockface(site.zone(), clock.instant(), tongue.locale()));
        return new ShutInSheet(
                id,
                site.name(),
                terms.isPresent(),
                terms.filter(standing::on).isPresent(),
                terms.map(one -> said(one, tongue)).orElse(List.of()),
                terms.map(Terms::words).orElse(""),
                standing.request().map(words::request).orElse(""),
                standing.request().map(words::asked).orElse(""),
                standing.request().filter(Request::open).isPresent(),
                terms.filter(this::lacks)
                        .map(one -> tongue.say("shutin.no-relay", one.through()))
                        .orElse(""));
    }

    /** The names of those that this gateway has. */
    Set<String> relays() {
        return relays;
    }

    private boolean lacks(Terms terms) {
        return terms.way() == Terms.Way.RELAY && !relays.contains(terms.through());
    }

    private static List<String> said(Terms terms, Tongue tongue) {
        var said = new ArrayList<String>();
        said.add(tongue.say("shutin.way." + terms.way().word(), terms.through()));
        said.add(tongue.say("shutin.expires", minutes(terms.expires())));
        said.add(tongue.say("shutin.confirm", terms.point() + "/" + terms.done(), minutes(terms.confirmWithin())));
        said.add(tongue.say("shutin.refuse", terms.point() + "/" + terms.refused()));
        terms.lastCall().ifPresent(left -> said.add(tongue.say("shutin.lastcall", minutes(left))));
        return said;
    }

    private static String minutes(Duration length) {
        return length.toSecondsPart() == 0
                ? Long.toString(length.toMinutes())
                : length.toMinutes() + ":" + String.format("%02d", length.toSecondsPart());
    }
}
