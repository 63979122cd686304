package yardlight.gateway.edit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import yardlight.db.setup.SetupEdit;
import yardlight.db.setup.SetupVersions;
import yardlight.gateway.problem.Problem;

/** How the setup became what it is: every edit with who and when, each of which can be taken back. */
@Component
public class History {

    private final SetupVersions versions;
    private final Desk desk;

    History(SetupVersions versions, Desk desk) {
        this.versions = versions;
        this.desk = desk;
    }

    /** One edit and what it changed. */
    public record Edit(int version, Instant at, String by, List<Saved.Changed> changes) {}

    /**
     * The newest edits, newest first. Two queries; the reading of each document is the work.
     *
     * @param before only versions below this one; {@link Integer#MAX_VALUE} for the newest of all
     */
    public List<Edit> newest(int before, int most) {
        List<SetupEdit> edits = versions.edits(before, most);
        if (edits.isEmpty()) {
            return List.of();
        }
        var trees = new HashMap<Integer, SetupTree>();
        int oldest = edits.get(edits.size() - 1).version();
        versions.between(oldest - 1, edits.get(0).version())
                .forEach(stored -> trees.put(stored.version(), Desk.look(stored).tree()));
        return edits.stream().map(edit -> edit(edit, trees)).toList();
    }

    /** Those among the newest of all that changed this piece, newest first; with whatever else they changed. */
    public List<Edit> of(Part part, String key, int among) {
        return newest(Integer.MAX_VALUE, among).stream()
                .filter(edit -> edit.changes().stream()
                        .anyMatch(
                                change -> change.part() == part && change.key().equals(key)))
                .toList();
    }

    private static Edit edit(SetupEdit edit, Map<Integer, SetupTree> trees) {
        SetupTree was = trees.getOrDefault(edit.version() - 1, SetupTree.EMPTY);
        SetupTree is = trees.getOrDefault(edit.version(), SetupTree.EMPTY);
        List<Saved.Changed> changes = was.changes(is).stream()
                .map(piece -> Saved.Changed.of(was.piece(piece.part(), piece.key()), piece))
                .filter(change -> !change.differences().isEmpty())
                .toList();
        return new Edit(edit.version(), edit.at(), edit.by(), changes);
    }

    /**
     * Makes everything that one edit changed what it was before, as a new edit. What was changed again since is not
     * touched: then nothing is stored, and the answer says what changed.
     *
     * @param agreed as in {@link Desk#save(int, List, String, String)}
     * @throws Problem 404 when there was no such edit, or nothing before it
     */
    public Saved takeBack(int version, String by, String agreed) {
        if (versions.between(version - 1, version).size() < 2) {
            throw Problem.notFound("there is no edit of this number with another one before it");
        }
        SetupTree was = desk.look(version - 1).tree();
        var wishes = new ArrayList<Piece>();
        was.changes(desk.look(version).tree()).forEach(piece -> wishes.add(was.piece(piece.part(), piece.key())));
        return desk.save(version, wishes, by, agreed);
    }
}
