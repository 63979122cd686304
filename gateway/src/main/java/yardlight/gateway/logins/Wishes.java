package yardlight.gateway.logins;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import yardlight.db.person.Role;
import yardlight.escalation.setup.Contact;
import yardlight.gateway.document.Fields;
import yardlight.gateway.setup.SetupInForce;

/** Reads what is asked for a login: which role, and which contact they are. */
@Component
class Wishes {

    private static final int LONGEST_ID = 64;

    private final SetupInForce inForce;

    Wishes(SetupInForce inForce) {
        this.inForce = inForce;
    }

    Optional<Role> role(Fields fields) {
        return fields.as("role", "must be owner, hand or reader", Wishes::role);
    }

    /** Noted as a fault when the setup has no such contact. */
    Optional<String> contact(Fields fields) {
        Optional<String> contact = fields.text("contact", LONGEST_ID);
        contact.filter(id -> !isContact(id))
                .ifPresent(id -> fields.fault("contact", "is no contact in the setup: " + id));
        return contact.filter(this::isContact);
    }

    static Optional<Role> role(String word) {
        return Stream.of(Role.values()).filter(role -> role.word().equals(word)).findFirst();
    }

    boolean isContact(String id) {
        return inForce.setup().contacts().containsKey(id);
    }

    List<Contact> contacts() {
        return List.copyOf(inForce.setup().contacts().values());
    }
}
