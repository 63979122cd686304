package yardlight.escalation;

import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.heartbeat.Verdict;

/** The alarms that no box names itself: they follow from its heartbeats, and from their absence. */
public final class BoxAlarms {

    private static final String POINT = "box";
    private static final String POWER = "power-";

    private BoxAlarms() {}

    /** Whether these are alarms of this point: then nobody has to set it up. */
    public static boolean have(String point) {
        return point.equals(POINT) || point.startsWith(POWER);
    }

    /** The box of a site does not speak. */
    public static AlarmKey silence(String site, Verdict verdict) {
        return new AlarmKey(site, POINT, verdict.condition());
    }

    /** A feed of a site is off. */
    public static AlarmKey feedOff(String site, String feed) {
        return new AlarmKey(site, POWER + feed, Verdict.POWER_OFF.condition());
    }
}
