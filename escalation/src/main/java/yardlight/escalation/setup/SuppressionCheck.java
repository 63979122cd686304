package yardlight.escalation.setup;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The part of {@link SetupCheck} that follows what suppresses what: two alarms that explain each other say nothing. */
final class SuppressionCheck {

    private final List<Point> points;

    private SuppressionCheck(List<Point> points) {
        this.points = points;
    }

    static void circles(Draft draft, Findings found) {
        var check = new SuppressionCheck(draft.points());
        for (int i = 0; i < draft.points().size(); i++) {
            Point point = draft.points().get(i);
            boolean itself = check.explaining(point).contains(point.id());
            if (!itself && check.leadsTo(point, point.id(), new HashSet<>())) {
                found.add(
                        "#/points/" + i + "/suppressedWhile",
                        "must.not-suppress-in-a-circle",
                        "suppressedWhile must not lead back to the point: " + point.id(),
                        point.id());
            }
        }
    }

    private boolean leadsTo(Point from, String to, Set<String> been) {
        for (String next : explaining(from)) {
            boolean there = next.equals(to);
            boolean further = been.add(next)
                    && points.stream()
                            .filter(point -> point.site().equals(from.site()))
                            .filter(point -> point.id().equals(next))
                            .anyMatch(point -> leadsTo(point, to, been));
            if (there || further) {
                return true;
            }
        }
        return false;
    }

    private Set<String> explaining(Point point) {
        var names = new HashSet<String>();
        point.suppressedWhile().forEach(other -> names.add(other.split("/", 2)[0]));
        return names;
    }
}
