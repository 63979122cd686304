package yardlight.gateway.boxsheet;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;

/**
 * What stands in the form of a box, as it was typed.
 *
 * @param every ISO 8601, empty when no heartbeat is expected
 * @param grace ISO 8601, or {@link #LEARNED}
 */
record BoxForm(String site, String feed, String link, boolean battery, String every, String grace) {

    /** In place of a grace: learned from its own heartbeats. */
    static final String LEARNED = "learned";

    static final BoxForm USUAL = new BoxForm("", "", "", false, "PT1M", "PT2M");

    private static final String HEARTBEAT = "heartbeat";

    static BoxForm of(Piece piece) {
        Map<String, Node> members = members(piece);
        Map<String, Node> beat =
                members.get(HEARTBEAT) instanceof Node.Members heartbeat ? heartbeat.nodes() : Map.of();
        boolean learned = is(beat, "learned");
        return new BoxForm(
                text(members, "site"),
                text(members, "feed"),
                text(members, "link"),
                is(members, "battery"),
                text(beat, "every"),
                learned ? LEARNED : beat.containsKey("grace") ? text(beat, "grace") : USUAL.grace());
    }

    static BoxForm typed(Map<String, String> typed) {
        return new BoxForm(
                typed.getOrDefault("site", ""),
                typed.getOrDefault("feed", "").strip(),
                typed.getOrDefault("link", "").strip(),
                typed.containsKey("battery"),
                typed.getOrDefault("every", ""),
                typed.getOrDefault("grace", USUAL.grace()));
    }

    /** The box as it is wanted; what this form does not show stays as it is there. */
    Piece over(Piece there) {
        var members = new LinkedHashMap<>(members(there));
        members.put("id", new Node.Text(there.key()));
        members.put("site", new Node.Text(site));
        put(members, "feed", feed);
        put(members, "link", link);
        if (battery) {
            members.put("battery", new Node.Flag(true));
        } else {
            members.remove("battery");
        }
        if (every.isEmpty()) {
            members.remove(HEARTBEAT);
        } else {
            members.put(HEARTBEAT, heartbeat(members.get(HEARTBEAT)));
        }
        return Piece.of(Part.BOXES, new Node.Members(members));
    }

    private Node heartbeat(Node there) {
        var beat = new LinkedHashMap<String, Node>(there instanceof Node.Members known ? known.nodes() : Map.of());
        beat.put("every", new Node.Text(every));
        if (grace.equals(LEARNED)) {
            beat.put("learned", new Node.Flag(true));
        } else {
            beat.remove("learned");
            beat.put("grace", new Node.Text(grace));
        }
        return new Node.Members(beat);
    }

    private static void put(Map<String, Node> members, String name, String value) {
        if (value.isEmpty()) {
            members.remove(name);
        } else {
            members.put(name, new Node.Text(value));
        }
    }

    private static Map<String, Node> members(Piece piece) {
        return piece.node().map(Node.Members::nodes).orElse(Map.of());
    }

    private static String text(Map<String, Node> members, String name) {
        Node node = members.get(name);
        if (node instanceof Node.Number number) {
            return number.written();
        }
        return Optional.ofNullable(node)
                .filter(Node.Text.class::isInstance)
                .map(text -> ((Node.Text) text).value())
                .orElse("");
    }

    private static boolean is(Map<String, Node> members, String name) {
        return members.get(name) instanceof Node.Flag flag && flag.value();
    }
}
