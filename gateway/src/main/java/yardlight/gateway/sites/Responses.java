package yardlight.gateway.sites;

import java.time.InstantSource;
import java.util.Map;
import org.springframework.stereotype.Component;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Part;
import yardlight.gateway.fields.Faces;
import yardlight.gateway.fields.Form;
import yardlight.gateway.fields.Forms;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** The part of a site's page by which its owner says how long it takes to do something there. */
@Component
class Responses {

    private final Forms forms;
    private final SetupInForce inForce;
    private final InstantSource clock;

    Responses(Forms forms, SetupInForce inForce, InstantSource clock) {
        this.forms = forms;
        this.inForce = inForce;
        this.clock = clock;
    }

    /** Of a site that nobody has set up it is empty, and is not shown. */
    Form open(String id) {
        return forms.open(new Forms.Wanted(
                ResponseFields.LAYOUT,
                Part.SITES,
                tree -> tree.piece(Part.SITES, id).node().orElse(new Node.Members(Map.of()))));
    }

    /** @throws Problem 404 when the site does not stand in the setup */
    Form save(String id, Map<String, String[]> sent, String by, Tongue tongue) {
        Setup setup = inForce.setup();
        Site site = setup.site(id).orElseThrow(() -> Problem.notFound("there is no such site"));
        return forms.save(
                new Forms.Wanted(
                        ResponseFields.LAYOUT,
                        Part.SITES,
                        tree -> tree.piece(Part.SITES, id)
                                .node()
                                .orElseThrow(() -> Problem.notFound("there is no such site"))),
                sent,
                by,
                new Names(setup),
                new Clockface(site.zone(), clock.instant(), tongue.locale()),
                tongue);
    }

    Faces.Fold fold(Form form, Tongue tongue) {
        return new Faces(form, tongue, Map.of(), Map.of()).fold(ResponseFields.NAME);
    }
}
