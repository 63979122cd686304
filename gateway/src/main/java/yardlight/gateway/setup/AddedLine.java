package yardlight.gateway.setup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Node;
import yardlight.gateway.problem.Problem;

/** Adds a line to a contact in the text of a setup, and leaves every other character of it as the owner wrote it. */
public final class AddedLine {

    /** Characters; to find a place in a text takes some hundred times its size for a moment. */
    private static final int LONGEST = 200_000;

    private static final String CONTACTS = "contacts";
    private static final String LINES = "lines";

    private AddedLine() {}

    /**
     * The text with the line behind the others of the contact.
     *
     * @return empty when there is no such contact, or when the text is so long, or written in such a way, that the result
     *     would not be exactly that
     */
    public static Optional<String> in(String text, String contact, String channel, String address) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        String line = "{\"channel\": " + quoted(channel) + ", \"address\": " + quoted(address) + "}";
        Map<String, Node> added = new LinkedHashMap<>();
        added.put("channel", new Node.Text(channel));
        added.put("address", new Node.Text(address));
        return Places.lastLine(text, contact)
                .map(place -> place.insert(text, line))
                .filter(edited -> isThat(text, edited, contact, new Node.Members(added)));
    }

    private static boolean isThat(String text, String edited, String contact, Node line) {
        try {
            Document before = SetupText.document(text);
            Document after = SetupText.document(edited);
            return before.faults().isEmpty()
                    && after.faults().isEmpty()
                    && SetupText.format(text) == SetupText.format(edited)
                    && after.root().equals(with(before.root(), contact, line));
        } catch (Problem unreadable) {
            return false;
        }
    }

    /** The tree as it is to be. */
    private static Node with(Node root, String contact, Node line) {
        return changed(root, CONTACTS, contacts -> people(contacts, contact, line));
    }

    private static Node people(Node contacts, String contact, Node line) {
        var people = new ArrayList<>(((Node.Items) contacts).nodes());
        people.replaceAll(person -> isOf(person, contact) ? changed(person, LINES, own -> plus(own, line)) : person);
        return new Node.Items(people);
    }

    private static Node plus(Node lines, Node line) {
        var all = new ArrayList<>(((Node.Items) lines).nodes());
        all.add(line);
        return new Node.Items(all);
    }

    private static boolean isOf(Node person, String contact) {
        return person instanceof Node.Members members
                && new Node.Text(contact).equals(members.nodes().get("id"));
    }

    private static Node changed(Node object, String member, UnaryOperator<Node> change) {
        var members = new LinkedHashMap<>(((Node.Members) object).nodes());
        members.computeIfPresent(member, (name, value) -> change.apply(value));
        return new Node.Members(members);
    }

    /** As JSON, which YAML is too: all of it printable, with what could end the text escaped. */
    private static String quoted(String text) {
        var quoted = new StringBuilder("\"");
        text.chars()
                .forEach(c -> quoted.append(
                        c == '"' || c == '\\' || c < ' ' || c > '~'
                                ? String.format("\\u%04x", c)
                                : String.valueOf((char) c)));
        return quoted.append('"').toString();
    }
}
