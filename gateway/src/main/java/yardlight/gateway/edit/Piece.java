package yardlight.gateway.edit;

import java.util.Optional;
import yardlight.gateway.document.Node;

/**
 * One object of the setup document as it is to be, or was.
 *
 * @param key as {@link Part} makes it: the id, for a point {@code site/id}
 * @param node empty when it is not there
 */
public record Piece(Part part, String key, Optional<Node.Members> node) {

    public static Piece of(Part part, Node.Members node) {
        return new Piece(part, part.key(node), Optional.of(node));
    }

    /** Not there. */
    public static Piece none(Part part, String key) {
        return new Piece(part, key, Optional.empty());
    }

    boolean same(Piece other) {
        return part == other.part && key.equals(other.key);
    }
}
