package yardlight.gateway.sites;

import java.util.List;

/**
 * The page of one site, in words.
 *
 * @param time at the site
 * @param inService whether people are called for its alarms
 * @param worked since when and by whose doing it is out of service; may be empty
 * @param editable whether it stands in the setup and can be changed
 * @param shutIn how it stands with being asked to shut in; empty where it is never asked
 * @param now alarms that are not over
 * @param lately alarms that are
 */
record SiteSheet(
        String id,
        String name,
        String time,
        String ladder,
        boolean inService,
        String worked,
        boolean editable,
        String shutIn,
        List<Box> boxes,
        List<Point> points,
        List<Row> now,
        List<Row> lately) {

    /**
     * One box.
     *
     * @param silent whether it is past its deadline
     * @param heard when it last spoke
     * @param facts battery, signal, feeds, link, each in words
     */
    record Box(String id, boolean silent, String heard, List<String> facts) {}

    /**
     * One point.
     *
     * @param set whether it is set up; one that only had alarms wants setting up
     * @param own whether it is one that the gateway makes, which nobody has to set up
     * @param reading what it read last, and how long ago; empty when it never did
     * @param state how it stands
     * @param alarm id of the alarm that says so; may be empty
     * @param waits whether that alarm waits for an answer
     */
    record Point(
            String id,
            String name,
            boolean set,
            boolean own,
            boolean inService,
            String reading,
            String state,
            String alarm,
            boolean waits) {

        public boolean unset() {
            return !set && !own;
        }
    }

    /** One alarm in a line. */
    record Row(String id, String name, String words, boolean open) {}
}
