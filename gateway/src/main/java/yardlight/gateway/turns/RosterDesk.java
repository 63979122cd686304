package yardlight.gateway.turns;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.springframework.stereotype.Component;
import yardlight.escalation.ladder.Rung;
import yardlight.gateway.edit.Desk;
import yardlight.gateway.edit.Filled;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.edit.SetupTree;
import yardlight.gateway.problem.Problem;

/** Makes, changes and takes away rosters of the setup. */
@Component
class RosterDesk {

    private final Desk desk;

    RosterDesk(Desk desk) {
        this.desk = desk;
    }

    /** A roster as it is looked at. */
    record Open(int seen, Piece piece) {}

    /** 404 when there is none. */
    Open open(String id) {
        Desk.Look look = desk.look();
        Piece piece = look.tree().piece(Part.ROSTERS, id);
        if (piece.node().isEmpty()) {
            throw Problem.notFound("there is no such roster");
        }
        return new Open(look.version(), piece);
    }

    int seen() {
        return desk.look().version();
    }

    /** What the form asks for, of the setup as it is now. A new roster gets an id that is made of its name. */
    Piece wish(RosterForm form) {
        SetupTree tree = desk.look().tree();
        String id = form.id().isEmpty() ? tree.free(Part.ROSTERS, form.name()) : form.id();
        return form.piece(id, tree.piece(Part.ROSTERS, id));
    }

    /** @param agreed as in {@link Desk#save(int, List, String, String)} */
    Saved save(int seen, Piece wish, String by, String agreed) {
        return desk.save(seen, List.of(wish), by, agreed);
    }

    /**
     * Where a roster is named, so that it cannot be taken away.
     *
     * @param rung from 1 on; 0 for a place in another roster
     */
    record Place(String id, int rung) {}

    List<Place> named(String id) {
        SetupTree tree = desk.look().tree();
        String name = Rung.ROSTER + id;
        var places = new ArrayList<Place>();
        for (Piece ladder : tree.all(Part.LADDERS)) {
            List<Filled> rungs = Filled.of(ladder).each("rungs");
            IntStream.range(0, rungs.size())
                    .filter(i -> rungs.get(i).texts("call").contains(name))
                    .forEach(i -> places.add(new Place(ladder.key(), i + 1)));
        }
        tree.all(Part.ROSTERS).stream()
                .filter(roster -> Filled.of(roster).texts("order").contains(name)
                        || Filled.of(roster).each("reliefs").stream()
                                .anyMatch(relief -> relief.text("contact").equals(name)))
                .forEach(roster -> places.add(new Place(roster.key(), 0)));
        return List.copyOf(places);
    }

    Saved remove(int seen, String id, String by) {
        return desk.save(seen, List.of(Piece.none(Part.ROSTERS, id)), by);
    }

    /** A version that we put into a form ourselves; 0 when somebody has changed it into something else. */
    static int version(String seen) {
        return seen.matches("\\d{1,9}") ? Integer.parseInt(seen) : 0;
    }
}
