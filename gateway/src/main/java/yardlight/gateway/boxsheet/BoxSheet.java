package yardlight.gateway.boxsheet;

import java.util.List;

/**
 * A box's page, in words.
 *
 * @param heard when it posted last, or that it never did
 * @param facts what it last said of itself
 * @param alarms the newest alarms that it reported
 * @param outOfService whether nobody is told when a box of its site falls silent
 * @param signs whether it has to sign its posts, which the examples do not
 * @param keys those that are good first
 * @param newest the key that was made last, which a form that makes another one names, so that the same form sent twice
 *     makes one; empty when there is none
 */
record BoxSheet(
        String id,
        String site,
        String siteName,
        String heard,
        boolean silent,
        List<Fact> facts,
        List<String> alarms,
        boolean outOfService,
        boolean signs,
        List<KeyRow> keys,
        String newest) {

    /** {@code Battery: 12.7 V}. */
    record Fact(String name, String value) {}

    /**
     * A key without itself.
     *
     * @param id by which it is revoked
     * @param words when it was made, used, and when it ends or was revoked
     */
    record KeyRow(String id, List<String> words, boolean good) {}

    /** How many keys open the door now. */
    public long good() {
        return keys.stream().filter(KeyRow::good).count();
    }
}
