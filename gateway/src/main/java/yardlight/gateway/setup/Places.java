package yardlight.gateway.setup;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Where something stands in the text of a setup; JSON is read as the YAML that it is. */
final class Places {

    private Places() {}

    /**
     * Right behind the last line of a contact.
     *
     * @param index in characters
     * @param indent of the dash in a list with dashes; empty for one in brackets
     */
    record Place(int index, Optional<Integer> indent) {

        String insert(String text, String line) {
            if (indent.isEmpty()) {
                return text.substring(0, index) + ", " + line + text.substring(index);
            }
            int next = text.indexOf('\n', index);
            int end = next < 0 ? text.length() : next;
            String row = text.substring(0, end);
            String ending = row.endsWith("\r") ? "\r" : "";
            return row + "\n" + " ".repeat(indent.get()) + "- " + line + ending + text.substring(end);
        }
    }

    /** Empty when there is none, or when the text cannot be read. */
    static Optional<Place> lastLine(String text, String contact) {
        try {
            return new Compose(LoadSettings.builder().build())
                    .composeString(text)
                    .flatMap(root -> member(root, "contacts"))
                    .flatMap(contacts -> person(contacts, contact))
                    .flatMap(person -> member(person, "lines"))
                    .flatMap(lines -> behind(lines, text));
        } catch (YamlEngineException e) {
            return Optional.empty();
        }
    }

    private static Optional<Node> person(Node contacts, String id) {
        return items(contacts).stream()
                .filter(person ->
                        member(person, "id").filter(own -> says(own, id)).isPresent())
                .findFirst();
    }

    private static Optional<Node> member(Node object, String name) {
        return tuples(object).stream()
                .filter(tuple -> says(tuple.getKeyNode(), name))
                .map(NodeTuple::getValueNode)
                .findFirst();
    }

    private static boolean says(Node node, String text) {
        return node instanceof ScalarNode scalar && scalar.getValue().equals(text);
    }

    private static Optional<Place> behind(Node lines, String text) {
        List<Node> items = items(lines);
        if (items.isEmpty()) {
            return Optional.empty();
        }
        Optional<Integer> index =
                end(items.get(items.size() - 1)).map(mark -> text.offsetByCodePoints(0, mark.getIndex()));
        return isBlock(lines)
                ? index.flatMap(at -> lines.getStartMark().map(mark -> new Place(at, Optional.of(mark.getColumn()))))
                : index.map(at -> new Place(at, Optional.empty()));
    }

    /** Behind its last character. What is indented ends for the parser only where the next thing begins. */
    private static Optional<Mark> end(Node node) {
        if (!isBlock(node)) {
            return node.getEndMark();
        }
        List<Node> items = items(node);
        List<NodeTuple> tuples = tuples(node);
        if (!items.isEmpty()) {
            return end(items.get(items.size() - 1));
        }
        return tuples.isEmpty()
                ? Optional.empty()
                : end(tuples.get(tuples.size() - 1).getValueNode());
    }

    private static boolean isBlock(Node node) {
        return node instanceof CollectionNode<?> many && many.getFlowStyle() == FlowStyle.BLOCK;
    }

    private static List<Node> items(Node node) {
        return node instanceof SequenceNode sequence ? sequence.getValue() : List.of();
    }

    private static List<NodeTuple> tuples(Node node) {
        return node instanceof MappingNode mapping ? mapping.getValue() : List.of();
    }
}
