package yardlight.gateway.edit;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import yardlight.gateway.document.Node;

/** A setup document as a tree, piece by piece. Immutable: a change gives another one. */
public final class SetupTree {

    static final SetupTree EMPTY = new SetupTree(new Node.Members(Map.of()));

    private static final int LONGEST_ID = 60;

    private final Node.Members root;

    SetupTree(Node.Members root) {
        this.root = root;
    }

    Node.Members root() {
        return root;
    }

    /** All objects of a list, in its order. */
    public List<Piece> all(Part part) {
        return items(part).stream()
                .filter(Node.Members.class::isInstance)
                .map(node -> Piece.of(part, (Node.Members) node))
                .toList();
    }

    /** One object as it stands here, which may be not at all. */
    public Piece piece(Part part, String key) {
        return all(part).stream()
                .filter(piece -> piece.key().equals(key))
                .findFirst()
                .orElse(Piece.none(part, key));
    }

    /** An id that nothing in the list has, made of what people call it; empty when there is no letter in that. */
    public String free(Part part, String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String base = plain.substring(0, Math.min(LONGEST_ID, plain.length()));
        String id = base;
        for (int i = 2; piece(part, id).node().isPresent(); i++) {
            id = base + "-" + i;
        }
        return id;
    }

    /** The object that stands at this place of a list, from 0. */
    Optional<Piece> at(Part part, int place) {
        List<Node> items = items(part);
        return place < items.size() && items.get(place) instanceof Node.Members members
                ? Optional.of(Piece.of(part, members))
                : Optional.empty();
    }

    /** With this piece as it is wanted: in its place, at the end when it is new, and gone when it is not to be there. */
    public SetupTree with(Piece wish) {
        var items = new ArrayList<>(items(wish.part()));
        int place = place(items, wish);
        if (wish.node().isEmpty()) {
            items.removeIf(node -> wish.part().key(node).equals(wish.key()));
        } else if (place < 0) {
            items.add(wish.node().get());
        } else {
            items.set(place, wish.node().get());
        }
        var members = new LinkedHashMap<>(root.nodes());
        members.put(wish.part().word(), new Node.Items(items));
        return new SetupTree(new Node.Members(members));
    }

    private static int place(List<Node> items, Piece wish) {
        for (int i = 0; i < items.size(); i++) {
            if (wish.part().key(items.get(i)).equals(wish.key())) {
                return i;
            }
        }
        return -1;
    }

    private List<Node> items(Part part) {
        return root.nodes().get(part.word()) instanceof Node.Items items ? items.nodes() : List.of();
    }

    /** What became of which pieces on the way from this tree to a later one, each as it is there. */
    List<Piece> changes(SetupTree later) {
        var changes = new ArrayList<Piece>();
        for (Part part : Part.values()) {
            Map<String, Piece> before = byKey(part);
            Map<String, Piece> after = later.byKey(part);
            after.values().stream()
                    .filter(piece -> !piece.equals(before.get(piece.key())))
                    .forEach(changes::add);
            before.keySet().stream()
                    .filter(key -> !after.containsKey(key))
                    .forEach(key -> changes.add(Piece.none(part, key)));
        }
        return changes;
    }

    private Map<String, Piece> byKey(Part part) {
        var pieces = new LinkedHashMap<String, Piece>();
        all(part).forEach(piece -> pieces.put(piece.key(), piece));
        return pieces;
    }
}
