package yardlight.gateway.document;

import java.util.List;
import java.util.Map;

/** A JSON or YAML value. Numbers are kept as they were written: {@code 18.0} stays {@code 18.0}. */
public sealed interface Node {

    record Text(String value) implements Node {}

    record Number(String written) implements Node {}

    record Flag(boolean value) implements Node {}

    record Nothing() implements Node {}

    record Items(List<Node> nodes) implements Node {
        public Items {
            nodes = List.copyOf(nodes);
        }
    }

    /** In the order in which they were written. */
    record Members(Map<String, Node> nodes) implements Node {}
}
