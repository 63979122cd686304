package yardlight.escalation.setup;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import yardlight.escalation.runtime.PumpRules;

/** Finds pumps that are to empty what is no tank, or to press on what is not there. */
final class EquipmentCheck {

    private EquipmentCheck() {}

    static void pumps(Draft draft, Findings found) {
        List<Point> points = draft.points();
        // Of points that come twice, which is a mistake of its own, the first counts.
        Map<String, Point> byName = points.stream()
                .collect(Collectors.toMap(EquipmentCheck::name, Function.identity(), (first, second) -> first));
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            String pointer = "#/points/" + i + "/pump";
            point.equipment().pump().ifPresent(pump -> check(point, pump, byName, pointer, found));
        }
    }

    private static void check(Point point, PumpRules pump, Map<String, Point> known, String pointer, Findings found) {
        pump.empties().ifPresent(id -> {
            Point tank = known.get(point.site() + "/" + id);
            if (tank == null || tank.equipment().tank().isEmpty()) {
                String english = "empties must be a point of the same site with a tank: " + id;
                found.add(pointer + "/empties", "must.empty-a-tank", english, id);
            }
        });
        pump.pressure()
                .filter(id -> !known.containsKey(point.site() + "/" + id))
                .ifPresent(id -> found.add(
                        pointer + "/pressure",
                        "must.be-at-the-site",
                        "pressure must be a point of the same site: " + id,
                        "pressure",
                        id));
    }

    private static String name(Point point) {
        return point.site() + "/" + point.id();
    }
}
