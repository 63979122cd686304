package yardlight.gateway.start;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.db.person.People;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;

/** Whoever sets themselves up as the first contact is that contact: their login says so from then on. */
@Component
class OwnContact {

    private final People people;

    OwnContact(People people) {
        this.people = people;
    }

    /** Does nothing for a login to which somebody has given a contact already. */
    void of(String login, List<Piece> stored) {
        Optional<String> contact = stored.stream()
                .filter(piece -> piece.part() == Part.CONTACTS)
                .map(Piece::key)
                .findFirst();
        if (contact.isPresent()) {
            people.change(login, person -> person.contact().isPresent() ? person : person.of(contact));
        }
    }
}
