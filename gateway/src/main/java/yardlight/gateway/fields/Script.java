package yardlight.gateway.fields;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yardlight.gateway.document.Node;

/** How a field stands in the setup and how in a form, there and back. */
final class Script {

    private static final String NUMBER = "[+-]?(\\d{1,18}(\\.\\d{0,9})?|\\.\\d{1,9})";
    private static final String PLAIN_NUMBER = "-?(0|[1-9]\\d*)(\\.\\d+)?";
    private static final String BETWEEN = "[\\s,;]+";

    private Script() {}

    /** What the form shows of it. */
    static Values shown(Field field, Optional<Node> node) {
        String id = field.id();
        return switch (field.kind()) {
            case SPAN -> new Values(Values.of(id, Span.of(words(node))));
            case TICK -> new Values(Map.of(id, words(node).equals("true") ? "true" : ""));
            case LINES -> new Values(Map.of(id, lines(node, Script::words)));
            case ROWS -> new Values(Map.of(id, lines(node, Script::row)));
            case TEXT, NUMBER, CHOICE -> new Values(Map.of(id, words(node)));
        };
    }

    private static String words(Optional<Node> node) {
        return node.map(Script::words).orElse("");
    }

    private static String words(Node node) {
        if (node instanceof Node.Text text) {
            return text.value();
        }
        if (node instanceof Node.Number number) {
            return number.written();
        }
        return node instanceof Node.Flag flag ? Boolean.toString(flag.value()) : "";
    }

    private static String row(Node node) {
        return items(node).map(Script::words).collect(Collectors.joining(" "));
    }

    private static String lines(Optional<Node> node, java.util.function.Function<Node, String> line) {
        return node.stream().flatMap(Script::items).map(line).collect(Collectors.joining("\n"));
    }

    private static Stream<Node> items(Node node) {
        return node instanceof Node.Items items ? items.nodes().stream() : Stream.empty();
    }

    /** Whether the setup could have it at all; whether it is right there is for its reader to say. */
    static boolean good(Field field, Values typed) {
        return switch (field.kind()) {
            case SPAN -> typed.span(field.id()).good();
            case NUMBER -> typed.blank(field) || typed.at(field.id()).strip().matches(NUMBER);
            case ROWS -> badRow(typed.at(field.id())).isEmpty();
            case TEXT, TICK, CHOICE, LINES -> true;
        };
    }

    /** The number, from 1, of the first line that is no pair of numbers. */
    static Optional<Integer> badRow(String typed) {
        List<String> lines = typed.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            boolean pair = line.split(BETWEEN).length == 2
                    && Stream.of(line.split(BETWEEN)).allMatch(n -> n.matches(NUMBER));
            if (!line.isEmpty() && !pair) {
                return Optional.of(i + 1);
            }
        }
        return Optional.empty();
    }

    /**
     * What is to stand in the setup. A field that says what it said is left as it is written there.
     *
     * @param before what stands there
     */
    static Optional<Node> node(Field field, Values typed, Optional<Node> before) {
        if (typed.same(field, shown(field, before))) {
            return before;
        }
        if (typed.blank(field)) {
            return Optional.empty();
        }
        String text = typed.at(field.id()).strip();
        return Optional.of(
                switch (field.kind()) {
                    case TEXT, CHOICE -> new Node.Text(text);
                    case NUMBER -> number(text);
                    case SPAN -> new Node.Text(typed.span(field.id()).duration());
                    case TICK -> new Node.Flag(text.equals("true"));
                    case LINES ->
                        new Node.Items(written(text)
                                .map(line -> (Node) new Node.Text(line))
                                .toList());
                    case ROWS ->
                        new Node.Items(written(text)
                                .map(line -> (Node) new Node.Items(Stream.of(line.split(BETWEEN))
                                        .map(Script::number)
                                        .toList()))
                                .toList());
                });
    }

    private static Stream<String> written(String text) {
        return text.lines().map(String::strip).filter(line -> !line.isEmpty());
    }

    /** What JSON has no number for stays a text, and is read as the same. */
    private static Node number(String text) {
        return text.matches(PLAIN_NUMBER) ? new Node.Number(text) : new Node.Text(text);
    }
}
