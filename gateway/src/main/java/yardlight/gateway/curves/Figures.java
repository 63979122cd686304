package yardlight.gateway.curves;

import java.math.BigDecimal;
import java.util.List;

/**
 * Curves as the script of the page reads them. Times are seconds since 1970.
 *
 * @param from beginning of what was asked for
 * @param to its end
 */
record Figures(long from, long to, List<Line> curves, List<Edge> limits, List<Alarm> alarms) {

    /**
     * One curve.
     *
     * @param point id
     * @param name of the point, and of the day if it is another one
     * @param back so many days before; its times are moved to lie over the others
     * @param low lowest of each time; none where every time has one reading
     * @param mean {@code null} where the line is to be cut
     */
    record Line(
            String point,
            String name,
            String unit,
            int back,
            List<Long> at,
            List<BigDecimal> mean,
            List<BigDecimal> low,
            List<BigDecimal> high) {}

    /** A limit of a point. */
    record Edge(String point, String words, double value, boolean above) {}

    /** An alarm of a point, and the page that tells of it. */
    record Alarm(String point, long from, long to, String words, String page) {}
}
