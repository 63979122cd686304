package yardlight.gateway.edit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import yardlight.db.setup.SetupEdit;
import yardlight.db.setup.SetupVersions;

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
     * The newest edits, newest first. Each costs the reading of its document.
     *
     * @param before only versions below this one; {@link Integer#MAX_VALUE} for the newest of all
     */
    public List<Edit> newest(int before, int most) {
        return versions.edits(before, most).stream().map(this::edit).toList();
    }

    private Edit edit(SetupEdit edit) {
        SetupTree was = desk.look(edit.version() - 1).tree();
        List<Saved.Changed> changes = was.changes(desk.look(edit.version()).tree()).stream()
                .map(piece -> Saved.Changed.of(was.piece(piece.part(), piece.key()), piece))
                .toList();
        return new Edit(edit.version(), edit.at(), edit.by(), changes);
    }

    /**
     * Makes everything that one edit changed what it was before, as a new edit. What was changed again since is not
     * touched: then nothing is stored, and the answer says what changed.
     */
    public Saved takeBack(int version, String by) {
        SetupTree was = desk.look(version - 1).tree();
        var wishes = new ArrayList<Piece>();
        was.changes(desk.look(version).tree()).forEach(piece -> wishes.add(was.piece(piece.part(), piece.key())));
        return desk.save(version, wishes, by);
    }
}
