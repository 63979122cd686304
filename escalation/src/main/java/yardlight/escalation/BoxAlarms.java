package yardlight.escalation;

import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.heartbeat.Verdict;

/** The alarms that no box names itself: they follow from its heartbeats, and from their absence. */
public final class BoxAlarms {

    private static final String POINT = "box";

    private BoxAlarms() {}

    /** The box of a site does not speak. */
    public static AlarmKey silence(String site, Verdict verdict) {
        return new AlarmKey(site, POINT, verdict.condition());
    }

    /** A feed of a site is off. */
    public static AlarmKey feedOff(String site, String feed) {
        return new AlarmKey(site, "power-" + feed, Verdict.POWER_OFF.condition());
    }
}
