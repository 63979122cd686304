package yardlight.gateway.sites;

import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Desk;
import yardlight.gateway.edit.History;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;

/** Takes sites and points out of service and puts them back: an edit of the setup like any other, with who and when. */
@Component
class Service {

    private static final String FIELD = "inService";

    /** Each edit that is looked at costs the reading of a document. */
    private static final int LOOK_BACK = 5;

    private final Desk desk;
    private final History history;

    Service(Desk desk, History history) {
        this.desk = desk;
        this.history = history;
    }

    /** @throws Problem 404 when the site does not stand in the setup */
    void site(String id, boolean inService, String by) {
        Desk.Look look = desk.look();
        Node.Members node =
                look.tree().piece(Part.SITES, id).node().orElseThrow(() -> Problem.notFound("there is no such site"));
        save(look, Piece.of(Part.SITES, Trees.with(node, FIELD, flag(inService))), by);
    }

    /** Of a point that is not set up only this is set up. */
    void point(String site, String point, boolean inService, String by) {
        Desk.Look look = desk.look();
        Node.Members node = Trees.point(look.tree(), site, point);
        save(look, Piece.of(Part.POINTS, Trees.with(node, FIELD, flag(inService))), by);
    }

    /** To be in service is what goes without saying. */
    private static Optional<Node> flag(boolean inService) {
        return inService ? Optional.empty() : Optional.of(new Node.Flag(false));
    }

    private void save(Desk.Look look, Piece wish, String by) {
        Saved saved = desk.save(look.version(), List.of(wish), by);
        if (saved instanceof Saved.Wrong wrong) {
            throw Problem.of(HttpStatus.CONFLICT, wrong.mistakes().get(0).rule());
        }
        if (saved instanceof Saved.Overtaken) {
            throw Problem.conflict("somebody else has changed this just now; look again");
        }
    }

    /** Since when a site is out of service and by whose doing, if that was one of the last edits; else empty. */
    String since(String site, Clockface clock, Tongue tongue) {
        return history.newest(Integer.MAX_VALUE, LOOK_BACK).stream()
                .filter(edit -> edit.changes().stream().anyMatch(change -> took(change, site)))
                .findFirst()
                .map(edit -> tongue.say("sites.worked", clock.read(edit.at()), edit.by()))
                .orElse("");
    }

    private static boolean took(Saved.Changed change, String site) {
        return change.part() == Part.SITES
                && change.key().equals(site)
                && change.differences().stream()
                        .anyMatch(
                                one -> one.field().equals(FIELD) && one.after().equals("false"));
    }
}
