package yardlight.gateway.edit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.gateway.document.Node;

/** A piece of the setup as a form shows it: everything is a text, and what is not there is an empty one. */
public record Filled(Node.Members members) {

    public static Filled of(Piece piece) {
        return new Filled(piece.node().orElse(new Node.Members(Map.of())));
    }

    public String text(String name) {
        return words(members.nodes().get(name)).orElse("");
    }

    public boolean has(String name) {
        return members.nodes().containsKey(name);
    }

    /** The texts of a list; none when it is no list. */
    public List<String> texts(String name) {
        return items(name).stream().flatMap(node -> words(node).stream()).toList();
    }

    /** The objects of a list. */
    public List<Filled> each(String name) {
        return items(name).stream()
                .filter(Node.Members.class::isInstance)
                .map(node -> new Filled((Node.Members) node))
                .toList();
    }

    /** An object within; empty when there is none. */
    public Optional<Filled> one(String name) {
        return members.nodes().get(name) instanceof Node.Members inside
                ? Optional.of(new Filled(inside))
                : Optional.empty();
    }

    private List<Node> items(String name) {
        return members.nodes().get(name) instanceof Node.Items items ? items.nodes() : List.of();
    }

    private static Optional<String> words(Node node) {
        if (node instanceof Node.Text text) {
            return Optional.of(text.value());
        }
        return node instanceof Node.Number number ? Optional.of(number.written()) : Optional.empty();
    }
}
