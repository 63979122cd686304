package yardlight.gateway.lines;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import yardlight.escalation.quiet.QuietHours;

/**
 * A clock with one hand for the whole day, noon above and midnight below, on which quiet hours are drawn. Lengths are those
 * of a picture 240 wide and high.
 *
 * @param arcs the quiet hours, each on a ring of its own, as paths of SVG
 * @param ticks the hours, every third one longer
 * @param hand from the middle to the time that it is
 */
record Dial(List<String> arcs, List<String> ticks, String hand, double handX, double handY) {

    private static final int MIDDLE = 120;
    private static final int FACE = 84;
    private static final int RING = 74;
    private static final int RINGS_APART = 15;
    private static final int MOST_RINGS = 4;
    private static final int HAND = 62;
    private static final int HOURS = 24;
    private static final double MINUTES = 1440;

    /** @param now by the clock on the wall of the person */
    static Dial of(List<QuietHours> quiet, LocalTime now) {
        var arcs = new ArrayList<String>();
        for (int i = 0; i < quiet.size(); i++) {
            int radius = RING - RINGS_APART * Math.min(i, MOST_RINGS - 1);
            arcs.add(arc(quiet.get(i).from(), quiet.get(i).to(), radius));
        }
        double angle = angle(now);
        return new Dial(
                List.copyOf(arcs),
                IntStream.range(0, HOURS).mapToObj(Dial::tick).toList(),
                path("M", angle, 0) + path(" L", angle, HAND),
                x(angle, HAND),
                y(angle, HAND));
    }

    private static String arc(LocalTime from, LocalTime to, int radius) {
        double start = angle(from);
        double end = angle(to);
        double span = (end - start + 2 * Math.PI) % (2 * Math.PI);
        int large = span > Math.PI ? 1 : 0;
        return path("M", start, radius)
                + String.format(Locale.ROOT, " A%d %d 0 %d 1", radius, radius, large)
                + path(" ", end, radius);
    }

    private static String tick(int hour) {
        double angle = angle(LocalTime.of(hour, 0));
        return path("M", angle, FACE) + path(" L", angle, hour % 3 == 0 ? FACE + 9 : FACE + 4);
    }

    /** Clockwise from midnight, which is below. */
    private static double angle(LocalTime time) {
        double minutes = time.toSecondOfDay() / 60.0;
        return minutes / MINUTES * 2 * Math.PI;
    }

    private static String path(String command, double angle, int radius) {
        return String.format(Locale.ROOT, "%s%.1f %.1f", command, x(angle, radius), y(angle, radius));
    }

    private static double x(double angle, int radius) {
        return rounded(MIDDLE - radius * Math.sin(angle));
    }

    private static double y(double angle, int radius) {
        return rounded(MIDDLE + radius * Math.cos(angle));
    }

    private static double rounded(double length) {
        return Math.round(length * 10) / 10.0;
    }
}
