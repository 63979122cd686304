package yardlight.gateway.lines;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.gateway.edit.Desk;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.edit.SetupTree;
import yardlight.gateway.problem.Problem;

/** Makes, changes and takes away contacts of the setup. */
@Component
class PersonDesk {

    private final Desk desk;

    PersonDesk(Desk desk) {
        this.desk = desk;
    }

    /** A form for a new one. */
    PersonForm blank() {
        return PersonForm.blank(desk.look().version());
    }

    /** A form for one that is there, else 404. */
    PersonForm open(String id) {
        Desk.Look look = desk.look();
        return PersonForm.of(look.version(), there(look.tree(), id));
    }

    private static Piece there(SetupTree tree, String id) {
        Piece piece = tree.piece(Part.CONTACTS, id);
        if (piece.node().isEmpty()) {
            throw Problem.notFound("there is no such contact");
        }
        return piece;
    }

    /** What the form asks for, of the setup as it is now. A new person gets an id that is made of the name. */
    Piece wish(PersonForm form) {
        SetupTree tree = desk.look().tree();
        String id = form.id().isEmpty() ? tree.free(Part.CONTACTS, form.name()) : form.id();
        return form.piece(id, tree.piece(Part.CONTACTS, id));
    }

    /** The form for somebody new, if the one whom it is for has been taken out meanwhile. */
    Optional<PersonForm> orphaned(PersonForm form) {
        Desk.Look look = desk.look();
        boolean gone = !form.id().isEmpty()
                && look.tree().piece(Part.CONTACTS, form.id()).node().isEmpty();
        return gone ? Optional.of(form.anew(look.version())) : Optional.empty();
    }

    /** @param agreed as in {@link Desk#save(int, List, String, String)} */
    Saved save(PersonForm form, Piece wish, String by, String agreed) {
        return desk.save(form.seen(), List.of(wish), by, agreed);
    }

    /** The setup without somebody, as it is now. */
    record Farewell(int seen, Leaving leaving) {}

    /** What it takes to take somebody out, else 404. */
    Farewell farewell(String id) {
        Desk.Look look = desk.look();
        there(look.tree(), id);
        return new Farewell(look.version(), Leaving.of(look.tree(), id));
    }

    /** Nothing is stored when something is in the way. */
    Saved leave(int seen, Leaving leaving, String by, String agreed) {
        return leaving.wishes().isEmpty() ? new Saved.Wrong(List.of()) : desk.save(seen, leaving.wishes(), by, agreed);
    }
}
