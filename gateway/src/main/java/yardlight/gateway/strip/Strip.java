package yardlight.gateway.strip;

import java.util.List;

/**
 * A curve as a page draws it without a script: on a sheet {@value #WIDE} wide that is stretched to the page, and
 * {@value #HIGH} high, which is not. Places along are percentages, places up and down pixels.
 *
 * @param name of the point
 * @param last newest figure with its unit
 * @param sentence the curve in words
 * @param lines paths of the means
 * @param bands paths around the lowest and highest, where they differ
 * @param figures marks of the scale
 * @param times marks of the time
 * @param limits where they lie on the sheet
 * @param troubles bars of alarms
 */
public record Strip(
        String name,
        String last,
        String sentence,
        List<String> lines,
        List<String> bands,
        List<Mark> figures,
        List<Mark> times,
        List<Edge> limits,
        List<Bar> troubles,
        List<Account.Row> rows) {

    public static final int WIDE = 1000;
    public static final int HIGH = 132;

    /** Where the ruled part begins and ends. */
    static final int TOP = 10;

    static final int BOTTOM = 110;

    /** A mark: a percentage along or a pixel down, and what stands there. */
    public record Mark(String place, String words) {}

    /**
     * A limit.
     *
     * @param teeth path of the little teeth on the side where the trouble lies
     */
    public record Edge(String place, String words, String label, String teeth) {}

    /** An alarm, from and how long in percent. */
    public record Bar(String from, String width, String words) {}
}
