package yardlight.gateway.start;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Desk;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;

/** Makes of what was typed the pieces that it means. What is there already is changed, and keeps what is not asked for here. */
final class Wishes {

    /** Until somebody says otherwise. */
    static final String WAIT = "PT5M";

    private final Desk.Look look;
    private final Map<String, String> typed;

    Wishes(Desk.Look look, Map<String, String> typed) {
        this.look = look;
        this.typed = typed;
    }

    /** None when the name is missing. */
    List<Piece> of(Step step) {
        return switch (step) {
            case YOU -> List.of(you());
            case SITE -> site();
            case BOX -> List.of(box());
            case LADDER -> ladder();
            case TEST -> List.of();
        };
    }

    private String typed(String name) {
        return typed.getOrDefault(name, "").strip();
    }

    private Piece you() {
        var line = new LinkedHashMap<String, Node>();
        line.put("channel", new Node.Text(typed("channel")));
        line.put("address", new Node.Text(typed("address")));
        Map<String, Node> members = begun(Part.CONTACTS, "owner");
        text(members, "name");
        text(members, "zone");
        text(members, "language");
        var lines = new ArrayList<Node>();
        lines.add(new Node.Members(line));
        if (members.get("lines") instanceof Node.Items known) {
            lines.addAll(known.nodes()
                    .subList(Math.min(1, known.nodes().size()), known.nodes().size()));
        }
        members.put("lines", new Node.Items(lines));
        return Piece.of(Part.CONTACTS, new Node.Members(members));
    }

    private List<Piece> site() {
        Map<String, Node> members = begun(Part.SITES, "site");
        text(members, "name");
        text(members, "zone");
        Optional<Piece> ladder = Progress.first(look.tree(), Part.LADDERS);
        String you = Progress.first(look.tree(), Part.CONTACTS).map(Piece::key).orElse("");
        Piece made = ladder.orElseGet(() -> rung("night", you, WAIT, Map.of()));
        members.putIfAbsent("ladder", new Node.Text(made.key()));
        Piece site = Piece.of(Part.SITES, new Node.Members(members));
        return ladder.isPresent() ? List.of(site) : List.of(site, made);
    }

    private Piece box() {
        Map<String, Node> members = begun(Part.BOXES, "box");
        String site = Progress.first(look.tree(), Part.SITES).map(Piece::key).orElse("");
        members.putIfAbsent("site", new Node.Text(site));
        var beat = new LinkedHashMap<String, Node>();
        beat.put("every", new Node.Text(typed("every")));
        beat.put("grace", new Node.Text("PT2M"));
        members.put("heartbeat", new Node.Members(beat));
        return Piece.of(Part.BOXES, new Node.Members(members));
    }

    private List<Piece> ladder() {
        Optional<Piece> there = Progress.first(look.tree(), Part.LADDERS).filter(Progress::simple);
        String you = Progress.first(look.tree(), Part.CONTACTS).map(Piece::key).orElse("");
        return there.map(ladder -> List.of(rung(
                        ladder.key(),
                        you,
                        typed("wait"),
                        ladder.node().map(Node.Members::nodes).orElse(Map.of()))))
                .orElse(List.of());
    }

    private Piece rung(String id, String you, String wait, Map<String, Node> before) {
        var rung = new LinkedHashMap<String, Node>();
        rung.put("call", new Node.Items(List.of(new Node.Text(you))));
        rung.put("wait", new Node.Text(wait));
        var members = new LinkedHashMap<>(before);
        members.put("id", new Node.Text(id));
        members.put("rungs", new Node.Items(List.of(new Node.Members(rung))));
        if (typed.containsKey("again")) {
            members.put("again", new Node.Number(typed("again")));
        }
        return Piece.of(Part.LADDERS, new Node.Members(members));
    }

    /** The first of its kind as it stands, or a new one with an id made of its name. */
    private Map<String, Node> begun(Part part, String otherwise) {
        Optional<Piece> there = Progress.first(look.tree(), part);
        var members = new LinkedHashMap<String, Node>();
        there.flatMap(Piece::node).ifPresent(node -> members.putAll(node.nodes()));
        if (there.isEmpty()) {
            String id = look.tree().free(part, typed("name"));
            members.put("id", new Node.Text(id.isEmpty() ? otherwise : id));
        }
        return members;
    }

    private void text(Map<String, Node> members, String name) {
        members.put(name, new Node.Text(typed(name)));
    }
}
