package yardlight.gateway.sites;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.SetupTree;

/** Changes members of the setup's objects and takes over all others. */
final class Trees {

    private Trees() {}

    /** The point as it stands in the setup, or as it would begin. */
    static Node.Members point(SetupTree tree, String site, String point) {
        return tree.piece(Part.POINTS, site + "/" + point)
                .node()
                .orElseGet(() -> new Node.Members(
                        new LinkedHashMap<>(Map.of("id", new Node.Text(point), "site", new Node.Text(site)))));
    }

    /** With this member; without it when there is no value. */
    static Node.Members with(Node.Members node, String name, Optional<? extends Node> value) {
        var members = new LinkedHashMap<>(node.nodes());
        if (value.isPresent()) {
            members.put(name, value.get());
        } else {
            members.remove(name);
        }
        return new Node.Members(members);
    }
}
