package yardlight.escalation;

import java.util.List;
import java.util.Map;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.Flood;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.shutin.Standing;
import yardlight.escalation.swap.Offer;

/** The new state, as far as it differs from the old one; stored together with the log lines or not at all. */
public record Changes(
        List<Alarm> alarms,
        List<Callout> callouts,
        List<Notice> notices,
        List<Desk> desks,
        List<BoxWatch> boxes,
        Map<String, Flood> floods,
        List<LineHealth> lines,
        List<Absence> absences,
        List<Gauge> gauges,
        List<Standing> standings,
        List<Offer> offers) {

    /** Nothing of readings and of shutting in. */
    public Changes(
            List<Alarm> alarms,
            List<Callout> callouts,
            List<Notice> notices,
            List<Desk> desks,
            List<BoxWatch> boxes,
            Map<String, Flood> floods,
            List<LineHealth> lines,
            List<Absence> absences) {
        this(alarms, callouts, notices, desks, boxes, floods, lines, absences, List.of(), List.of(), List.of());
    }

    /** Nothing but how sites stand with shutting in. */
    public static Changes standings(List<Standing> standings) {
        return new Changes(
                List.of(), List.of(), List.of(), List.of(), List.of(), Map.of(), List.of(), List.of(), List.of(),
                standings, List.of());
    }

    /** Nothing but turns that were offered. */
    public static Changes offers(List<Offer> offers) {
        return new Changes(
                List.of(), List.of(), List.of(), List.of(), List.of(), Map.of(), List.of(), List.of(), List.of(),
                List.of(), offers);
    }

    /** Nothing new of anybody's lines. */
    public Changes(
            List<Alarm> alarms,
            List<Callout> callouts,
            List<Notice> notices,
            List<Desk> desks,
            List<BoxWatch> boxes,
            Map<String, Flood> floods) {
        this(alarms, callouts, notices, desks, boxes, floods, List.of());
    }

    /** Nothing but silences. */
    public static Changes of(List<Absence> absences) {
        return new Changes(List.of(), List.of(), List.of(), List.of(), List.of(), Map.of(), List.of(), absences);
    }

    /** Nothing new of silences. */
    public Changes(
            List<Alarm> alarms,
            List<Callout> callouts,
            List<Notice> notices,
            List<Desk> desks,
            List<BoxWatch> boxes,
            Map<String, Flood> floods,
            List<LineHealth> lines) {
        this(alarms, callouts, notices, desks, boxes, floods, lines, List.of());
    }

    /** Nothing but what is remembered of readings. */
    public static Changes gauged(List<Gauge> gauges) {
        return new Changes(
                List.of(), List.of(), List.of(), List.of(), List.of(), Map.of(), List.of(), List.of(), gauges,
                List.of(), List.of());
    }
}
