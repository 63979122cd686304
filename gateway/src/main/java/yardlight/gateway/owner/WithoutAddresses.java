package yardlight.gateway.owner;

import java.util.LinkedHashMap;
import java.util.Map;
import yardlight.gateway.document.Node;
import yardlight.gateway.page.Masks;

/** A setup for those who may only read: whom a line reaches is shown, but not where. */
final class WithoutAddresses {

    private static final String CONTACTS = "contacts";
    private static final String ADDRESS = "address";

    private WithoutAddresses() {}

    /** @param root of the document */
    static Node of(Node root) {
        if (!(root instanceof Node.Members members)) {
            return root;
        }
        Map<String, Node> shown = new LinkedHashMap<>(members.nodes());
        shown.computeIfPresent(CONTACTS, (name, contacts) -> masked(contacts));
        return new Node.Members(shown);
    }

    private static Node masked(Node node) {
        if (node instanceof Node.Items items) {
            return new Node.Items(
                    items.nodes().stream().map(WithoutAddresses::masked).toList());
        }
        if (node instanceof Node.Members members) {
            var shown = new LinkedHashMap<String, Node>();
            members.nodes()
                    .forEach((name, value) -> shown.put(
                            name,
                            name.equals(ADDRESS) && value instanceof Node.Text text
                                    ? new Node.Text(Masks.of(text.value()))
                                    : masked(value)));
            return new Node.Members(shown);
        }
        return node;
    }
}
