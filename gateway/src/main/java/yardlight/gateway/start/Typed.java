package yardlight.gateway.start;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Piece;

/** What stands in a step's form before anybody types: what is set up, else what is usual. */
final class Typed {

    private Typed() {}

    /**
     * @param language of whoever looks
     * @param channel the one that is offered first
     */
    static Map<String, String> before(Step step, Progress progress, String language, String channel) {
        var typed = new HashMap<String, String>();
        switch (step) {
            case YOU -> {
                Optional<Node> line = member(progress.you(), "lines").flatMap(lines -> item(lines, 0));
                typed.put("name", text(member(progress.you(), "name"), ""));
                typed.put("zone", text(member(progress.you(), "zone"), ""));
                typed.put("language", text(member(progress.you(), "language"), language));
                typed.put("channel", text(line.flatMap(one -> member(one, "channel")), channel));
                typed.put("address", text(line.flatMap(one -> member(one, "address")), ""));
            }
            case SITE -> {
                typed.put("name", text(member(progress.site(), "name"), ""));
                typed.put("zone", text(member(progress.site(), "zone").or(() -> member(progress.you(), "zone")), ""));
            }
            case BOX -> {
                String site = text(member(progress.site(), "name"), "");
                typed.put("name", site + " box");
                typed.put("every", "PT1M");
            }
            case LADDER -> {
                Optional<Node> rung = member(progress.ladder(), "rungs").flatMap(rungs -> item(rungs, 0));
                typed.put("wait", text(rung.flatMap(one -> member(one, "wait")), Wishes.WAIT));
                typed.put("again", text(member(progress.ladder(), "again"), "3"));
            }
            case TEST -> {}
        }
        return typed;
    }

    private static Optional<Node> member(Optional<Piece> piece, String name) {
        return piece.flatMap(Piece::node).flatMap(node -> member(node, name));
    }

    private static Optional<Node> member(Node node, String name) {
        return node instanceof Node.Members members
                ? Optional.ofNullable(members.nodes().get(name))
                : Optional.empty();
    }

    private static Optional<Node> item(Node node, int place) {
        List<Node> items = node instanceof Node.Items some ? some.nodes() : List.of();
        return place < items.size() ? Optional.of(items.get(place)) : Optional.empty();
    }

    private static String text(Optional<Node> node, String otherwise) {
        return node.map(any -> any instanceof Node.Number number
                        ? number.written()
                        : any instanceof Node.Text text ? text.value() : otherwise)
                .orElse(otherwise);
    }
}
