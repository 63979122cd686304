package yardlight.gateway.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.gateway.document.Node;

/** Writes a piece of the setup from a form. What the form does not show stays as it was. */
public final class Filling {

    private final Map<String, Node> members;

    private Filling(Map<String, Node> members) {
        this.members = members;
    }

    /** @param before as it was; empty for a new one */
    public static Filling of(Optional<Node.Members> before) {
        return new Filling(new LinkedHashMap<>(before.map(Node.Members::nodes).orElse(Map.of())));
    }

    /** A member with this text; a blank one takes it out. */
    public Filling text(String name, String value) {
        return node(name, value.isBlank() ? Optional.empty() : Optional.of(new Node.Text(value.strip())));
    }

    /** The same for a whole number. What is none stays a text, and is found wrong as the owner wrote it. */
    public Filling whole(String name, String value) {
        String stripped = value.strip();
        return stripped.matches("0|[1-9]\\d{0,8}")
                ? node(name, Optional.of(new Node.Number(stripped)))
                : text(name, value);
    }

    /** A list of texts, also an empty one. */
    public Filling texts(String name, List<String> values) {
        return node(
                name,
                Optional.of(new Node.Items(values.stream()
                        .map(value -> (Node) new Node.Text(value.strip()))
                        .toList())));
    }

    /** A list of objects; an empty one is taken out unless it has to be there. */
    public Filling each(String name, List<Node.Members> values, boolean needed) {
        return node(
                name,
                values.isEmpty() && !needed
                        ? Optional.empty()
                        : Optional.of(new Node.Items(List.<Node>copyOf(values))));
    }

    /** A member as it is given, or none. */
    public Filling node(String name, Optional<Node> value) {
        value.ifPresentOrElse(node -> members.put(name, node), () -> members.remove(name));
        return this;
    }

    public Node.Members done() {
        return new Node.Members(members);
    }
}
