package yardlight.demo.boxes;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Something at a place that can go wrong, and what it shows when it does.
 *
 * @param point point of the setup
 * @param condition why it alarms
 * @param label as the page calls it
 * @param scale empty for a switch
 */
public record Gauge(String point, String condition, String label, Optional<Scale> scale, Buttons buttons) {

    /** Labels of what makes it go wrong, and of what puts it right. */
    public record Buttons(String wrong, String right) {}

    /**
     * @param calm what it shows when all is well
     * @param beyond what it shows when it is not
     * @param limit where it alarms
     */
    public record Scale(double calm, double beyond, double limit, String unit) {}

    /** What a box posts when the gauge goes beyond its limit or comes back. */
    Map<String, Object> event(boolean beyond) {
        Map<String, Object> event = new LinkedHashMap<>();
        event.put("point", point);
        event.put("condition", condition);
        event.put("state", beyond ? "active" : "normal");
        scale.ifPresent(numbers -> {
            event.put("value", beyond ? numbers.beyond() : numbers.calm());
            event.put("limit", numbers.limit());
            event.put("unit", numbers.unit());
        });
        return event;
    }

    /** What it shows, {@code 18.4 ft}, or the word for a switch. */
    public String shows(boolean beyond) {
        return scale.map(numbers -> String.format(
                        Locale.ROOT, "%.1f %s", beyond ? numbers.beyond() : numbers.calm(), numbers.unit()))
                .orElse(beyond ? condition : "as it should be");
    }

    /** What one would see there, as part of a sentence: {@code water tank at 18.4 ft, limit 18.0}. */
    public String says(boolean beyond) {
        String what = label.toLowerCase(Locale.ROOT) + " ";
        return what
                + scale.map(numbers -> String.format(Locale.ROOT, "at %s, limit %.1f", shows(beyond), numbers.limit()))
                        .orElse(shows(beyond));
    }
}
