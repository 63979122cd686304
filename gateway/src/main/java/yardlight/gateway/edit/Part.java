package yardlight.gateway.edit;

import java.util.Locale;
import java.util.Optional;
import yardlight.gateway.document.Node;

/** A list of the setup document. */
public enum Part {
    SITES,
    BOXES,
    POINTS,
    CONTACTS,
    ROSTERS,
    LADDERS;

    private static final String ID = "id";

    /** As the document calls it: {@code ladders}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What tells an object of this list from the others: its id, and for a point its site too, {@code mesa-9/water-tank}. */
    String key(Node node) {
        String id = text(node, ID).orElse("");
        return this == POINTS ? text(node, "site").orElse("") + "/" + id : id;
    }

    private static Optional<String> text(Node node, String name) {
        return node instanceof Node.Members members && members.nodes().get(name) instanceof Node.Text text
                ? Optional.of(text.value())
                : Optional.empty();
    }
}
