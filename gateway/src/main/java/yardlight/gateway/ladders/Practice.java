package yardlight.gateway.ladders;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.escalation.rehearsal.Rehearsal;
import yardlight.escalation.rehearsal.Unheard;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Desk;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.page.Names;
import yardlight.gateway.stage.Stage;

/** Rehearses a ladder that is not stored, at a site as if it were the site's own. */
@Component
class Practice {

    /** Lines of a rehearsal; who reads more of them reads none. */
    static final int MOST_LINES = 60;

    static final Duration WEEK = Duration.ofDays(7);

    private final Desk desk;
    private final Stage stage;
    private final InstantSource clock;

    Practice(Desk desk, Stage stage, InstantSource clock) {
        this.desk = desk;
        this.stage = stage;
        this.clock = clock;
    }

    /**
     * What came of it.
     *
     * @param played empty when something is wrong with the ladder or with what was asked
     */
    record Practised(Desk.Trial trial, Ask ask, Optional<Played> played) {}

    /**
     * A rehearsal.
     *
     * @param cut whether there is more of it
     * @param from where the week that was searched begins
     */
    record Played(
            Setup setup,
            Rehearsal.Question question,
            List<Rehearsal.Line> lines,
            boolean cut,
            Instant from,
            List<Unheard.Span> unheard) {}

    /** The ladder as it is wanted. */
    Practised play(Piece ladder, Ask ask) {
        return play(wishes(ladder, ask), ask);
    }

    /** The setup with the ladder as it is wanted, which nobody stores. */
    Desk.Trial attempt(Piece ladder, Ask ask) {
        return desk.attempt(wishes(ladder, ask));
    }

    private List<Piece> wishes(Piece ladder, Ask ask) {
        var wishes = new ArrayList<Piece>();
        wishes.add(ladder);
        site(ask.site(), ladder.key()).ifPresent(wishes::add);
        return wishes;
    }

    /** The ladder as it is stored; empty when it is not. */
    Optional<Practised> stored(String ladder, Ask ask) {
        return desk.look()
                .tree()
                .piece(Part.LADDERS, ladder)
                .node()
                .map(there -> play(Piece.of(Part.LADDERS, there), ask));
    }

    private Optional<Piece> site(String site, String ladder) {
        return desk.look().tree().piece(Part.SITES, site).node().map(node -> {
            Map<String, Node> members = new LinkedHashMap<>(node.nodes());
            members.put("ladder", new Node.Text(ladder));
            return Piece.of(Part.SITES, new Node.Members(members));
        });
    }

    private Practised play(List<Piece> wishes, Ask ask) {
        Desk.Trial trial = desk.attempt(wishes);
        return new Practised(
                trial,
                ask,
                trial.setup().filter(setup -> ask.mistakes(setup).isEmpty()).map(setup -> play(setup, ask)));
    }

    private Played play(Setup setup, Ask ask) {
        Rehearsal.Question question = ask.question(new Names(setup).zone(ask.site()));
        List<Rehearsal.Line> lines = stage.play(setup, question, MOST_LINES);
        Instant now = clock.instant();
        return new Played(
                setup,
                question,
                lines.subList(0, Math.min(MOST_LINES, lines.size())),
                lines.size() >= MOST_LINES,
                now,
                stage.unheard(setup, ask.question(now), now.plus(WEEK)));
    }
}
