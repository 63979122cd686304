package yardlight.gateway.edit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yardlight.gateway.document.Node;

/**
 * One thing that differs between two states of a piece.
 *
 * @param field where, {@code rungs/2/wait}; places in lists count from 1. Empty for the piece as a whole
 * @param before empty when it was not there
 * @param after empty when it is gone
 */
public record Difference(String field, String before, String after) {

    /** From one state of a piece to a later one of the same. */
    public static List<Difference> between(Piece before, Piece after) {
        var found = new ArrayList<Difference>();
        if (before.node().isEmpty() || after.node().isEmpty()) {
            String was = before.node().map(node -> before.key()).orElse("");
            String is = after.node().map(node -> after.key()).orElse("");
            return was.equals(is) ? List.of() : List.of(new Difference("", was, is));
        }
        compare("", before.node().map(Node.class::cast), after.node().map(Node.class::cast), found);
        return List.copyOf(found);
    }

    private static void compare(String field, Optional<Node> before, Optional<Node> after, List<Difference> found) {
        if (before.equals(after)) {
            return;
        }
        // What is new or gone is told thing by thing, as what is changed.
        Node was = before.orElseGet(() -> nothing(after.orElseThrow()));
        Node is = after.orElseGet(() -> nothing(before.orElseThrow()));
        if (was instanceof Node.Members first && is instanceof Node.Members second) {
            members(field, first, second, found);
            return;
        }
        if (was instanceof Node.Items first && is instanceof Node.Items second && !scalars(first, second)) {
            items(field, first, second, found);
            return;
        }
        if (before.isPresent() && after.isPresent()) {
            // A number may be written as a text, and is read as the same.
            if (scalar(before.get())
                    && scalar(after.get())
                    && words(before.get()).equals(words(after.get()))) {
                return;
            }
        }
        found.add(new Difference(
                field,
                before.map(Difference::words).orElse(""),
                after.map(Difference::words).orElse("")));
    }

    private static Node nothing(Node like) {
        if (like instanceof Node.Members) {
            return new Node.Members(Map.of());
        }
        return like instanceof Node.Items ? new Node.Items(List.of()) : new Node.Nothing();
    }

    private static void members(String field, Node.Members was, Node.Members is, List<Difference> found) {
        Set<String> names = new LinkedHashSet<>(was.nodes().keySet());
        names.addAll(is.nodes().keySet());
        for (String name : names) {
            compare(
                    inside(field, name),
                    Optional.ofNullable(was.nodes().get(name)),
                    Optional.ofNullable(is.nodes().get(name)),
                    found);
        }
    }

    private static void items(String field, Node.Items was, Node.Items is, List<Difference> found) {
        int most = Math.max(was.nodes().size(), is.nodes().size());
        for (int i = 0; i < most; i++) {
            compare(inside(field, Integer.toString(i + 1)), item(was, i), item(is, i), found);
        }
    }

    private static Optional<Node> item(Node.Items items, int place) {
        return place < items.nodes().size() ? Optional.of(items.nodes().get(place)) : Optional.empty();
    }

    private static boolean scalars(Node.Items was, Node.Items is) {
        return was.nodes().stream().allMatch(Difference::scalar)
                && is.nodes().stream().allMatch(Difference::scalar);
    }

    private static boolean scalar(Node node) {
        return !(node instanceof Node.Members) && !(node instanceof Node.Items);
    }

    private static String inside(String field, String name) {
        return field.isEmpty() ? name : field + "/" + name;
    }

    private static String words(Node node) {
        if (node instanceof Node.Text text) {
            return text.value();
        }
        if (node instanceof Node.Number number) {
            return number.written();
        }
        if (node instanceof Node.Flag flag) {
            return Boolean.toString(flag.value());
        }
        if (node instanceof Node.Items items) {
            return items.nodes().stream().map(Difference::words).collect(Collectors.joining(", "));
        }
        if (node instanceof Node.Members members) {
            return members.nodes().entrySet().stream()
                    .map(entry -> entry.getKey() + " " + words(entry.getValue()))
                    .collect(Collectors.joining(", "));
        }
        return "";
    }
}
