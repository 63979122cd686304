package yardlight.escalation.wording;

import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Site;

/** One alarm that a text is about. */
public record Subject(Site site, Point point, Alarm alarm, Circumstance circumstance) {

    /** With nothing else to know about it. */
    public Subject(Site site, Point point, Alarm alarm) {
        this(site, point, alarm, Circumstance.NONE);
    }
}
