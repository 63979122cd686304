package yardlight.escalation.alarm;

import java.util.regex.Pattern;

/**
 * What makes two reports the same alarm: site, point and condition. The same key is never a second alarm
 * (RFC 8632 identifies an alarm by resource and type in the same way).
 *
 * @param site id of the site
 * @param point id of the point, whether or not the setup knows it
 * @param condition why the point alarms, such as {@code high-high}
 */
public record AlarmKey(String site, String point, String condition) implements Comparable<AlarmKey> {

    private static final int LONGEST = 64;

    /** The form of every id in the outside contract. */
    public static final Pattern ID = Pattern.compile("[a-z0-9][a-z0-9-]{0,63}");

    public AlarmKey {
        require("site", site);
        require("point", point);
        require("condition", condition);
    }

    private static void require(String part, String value) {
        if (!isId(value)) {
            throw new IllegalArgumentException(part + " must match " + ID + ": " + value);
        }
    }

    /** The same as {@link #ID}, read by hand: keys are made by the thousand each second. */
    private static boolean isId(String value) {
        boolean fits = !value.isEmpty() && value.length() <= LONGEST && value.charAt(0) != '-';
        for (int i = 0; fits && i < value.length(); i++) {
            char one = value.charAt(i);
            fits = one >= 'a' && one <= 'z' || one >= '0' && one <= '9' || one == '-';
        }
        return fits;
    }

    /**
     * The alarm of a site.
     *
     * @param local point and condition as {@link #local()} gives them
     */
    public static AlarmKey at(String site, String local) {
        int end = local.indexOf('/');
        return new AlarmKey(site, local.substring(0, end), local.substring(end + 1));
    }

    /** Point and condition as one name, {@code water-tank/high-high}: how one alarm of a site names another. */
    public String local() {
        return point + "/" + condition;
    }

    @Override
    public int compareTo(AlarmKey other) {
        int bySite = site.compareTo(other.site);
        return bySite != 0 ? bySite : local().compareTo(other.local());
    }
}
