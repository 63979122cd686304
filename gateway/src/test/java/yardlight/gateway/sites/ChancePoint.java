package yardlight.gateway.sites;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yardlight.gateway.document.Node;
import yardlight.gateway.fields.Pieces;

/** A point by chance, with anything that a setup may say of one. */
final class ChancePoint {

    private static final int DAY = 86_400;

    private final Pieces pieces;

    ChancePoint(Pieces pieces) {
        this.pieces = pieces;
    }

    Node.Members made() {
        var members = new HashMap<String, Node>();
        members.put("name", Pieces.text("TANK " + pieces.upTo(9)));
        members.put("unit", Pieces.text(pieces.one("ft", "psi", "%")));
        members.put("priority", Pieces.text(pieces.one("low", "medium", "high", "critical")));
        members.put("onDelay", pieces.span(0, DAY));
        members.put("offDelay", pieces.span(0, DAY));
        members.put("latching", new Node.Flag(pieces.perhaps()));
        members.put("reAlarm", pieces.span(60, 31 * DAY));
        members.put("suppressedWhile", Pieces.list(List.of(Pieces.text("power/power-off"), Pieces.text("box/silent"))));
        members.put("inService", new Node.Flag(pieces.perhaps()));
        members.put("limits", limits());
        members.put("change", change());
        members.put(
                "drift",
                pieces.some(
                        Map.of(
                                "target",
                                pieces.number(-9, 9),
                                "slack",
                                pieces.number(0, 9),
                                "decision",
                                pieces.number(1, 9)),
                        true));
        members.put("stuck", pieces.span(60, 31 * DAY));
        members.put("missing", pieces.span(10, 31 * DAY));
        members.put("current", pieces.some(Map.of("low", pieces.number(-9, 0), "high", pieces.number(1, 90)), true));
        members.put("tank", tank());
        members.put("pump", pump());
        members.put("leak", leak());
        var point = new LinkedHashMap<String, Node>();
        point.put("id", Pieces.text("one"));
        point.put("site", Pieces.text("mesa-9"));
        point.putAll(pieces.some(members, false).nodes());
        return new Node.Members(point);
    }

    private Node limits() {
        List<Node> rising = pieces.rising(4);
        var limits = new LinkedHashMap<String, Node>();
        List<String> names = List.of("lowLow", "low", "high", "highHigh");
        for (int i = 0; i < names.size(); i++) {
            if (pieces.perhaps() || i == 2) {
                limits.put(names.get(i), rising.get(i));
            }
        }
        if (pieces.perhaps()) {
            limits.put("deadband", pieces.number(0, 3));
        }
        return new Node.Members(limits);
    }

    private Node change() {
        var change = new LinkedHashMap<String, Node>();
        change.put("within", pieces.span(10, DAY));
        if (pieces.perhaps()) {
            change.put("fall", pieces.number(1, 9));
        }
        if (pieces.perhaps() || change.size() == 1) {
            change.put("rise", pieces.number(1, 9));
        }
        return new Node.Members(change);
    }

    private Node tank() {
        var tank = new LinkedHashMap<String, Node>();
        String shape = pieces.one("upright", "lying", "box", "strapping");
        if (shape.equals("strapping")) {
            int count = 1 + pieces.upTo(5);
            List<Node> heights = pieces.rising(count);
            List<Node> volumes = pieces.rising(count);
            var rows = new ArrayList<Node>();
            for (int i = 0; i < count; i++) {
                rows.add(Pieces.list(List.of(heights.get(i), volumes.get(i))));
            }
            tank.put(shape, Pieces.list(rows));
        } else {
            tank.put("shape", Pieces.text(shape));
            List<String> sizes = switch (shape) {
                case "upright" -> List.of("diameter", "height");
                case "lying" -> List.of("diameter", "length");
                default -> List.of("length", "width", "height");
            };
            sizes.forEach(size -> tank.put(size, pieces.number(1, 40)));
        }
        if (pieces.perhaps()) {
            tank.put("gravity", pieces.number(1, 2));
        }
        return new Node.Members(tank);
    }

    private Node pump() {
        return pieces.some(
                Map.of(
                        "on", pieces.number(-3, 9),
                        "hold", pieces.span(60, 31 * DAY),
                        "empties", Pieces.text("water-tank"),
                        "pressure", Pieces.text("line"),
                        "least", new Node.Number("0." + (1 + pieces.upTo(9))),
                        "deviations", pieces.number(1, 9),
                        "days", new Node.Number(Integer.toString(5 + pieces.upTo(10)))),
                false);
    }

    private Node leak() {
        return pieces.some(
                Map.of(
                        "within", pieces.span(60, 3600),
                        "factor", pieces.number(1, 4),
                        "least", new Node.Number("0." + (1 + pieces.upTo(9))),
                        "learn", pieces.span(0, 31 * DAY)),
                false);
    }
}
