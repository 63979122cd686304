package yardlight.escalation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Flood;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.shutin.Standing;
import yardlight.escalation.swap.Offer;

/** What a decision has changed so far: the last word on each thing. */
abstract class PutDown {

    final Map<AlarmKey, Alarm> alarms = new LinkedHashMap<>();
    final Map<String, Callout> callouts = new LinkedHashMap<>();
    final Map<String, Notice> notices = new LinkedHashMap<>();
    final Map<String, Desk> desks = new LinkedHashMap<>();
    final Map<String, BoxWatch> boxes = new LinkedHashMap<>();
    final Map<Path, Absence> absences = new LinkedHashMap<>();
    final Map<String, Flood> floods = new LinkedHashMap<>();
    final Map<LineHealth.Key, LineHealth> lines = new LinkedHashMap<>();
    final Map<Gauge.Key, Gauge> gauges = new LinkedHashMap<>();
    final Map<String, Standing> standings = new LinkedHashMap<>();
    final Map<String, Offer> offers = new LinkedHashMap<>();

    void put(Alarm alarm) {
        alarms.put(alarm.key(), alarm);
    }

    void put(Callout callout) {
        callouts.put(callout.id(), callout);
    }

    void put(Notice notice) {
        notices.put(notice.id(), notice);
    }

    void put(Desk desk) {
        desks.put(desk.contact(), desk);
    }

    void put(BoxWatch watch) {
        boxes.put(watch.box(), watch);
    }

    void put(Absence absence) {
        absences.put(absence.path(), absence);
    }

    void put(String site, Flood flood) {
        floods.put(site, flood);
    }

    void put(LineHealth line) {
        lines.put(line.key(), line);
    }

    void put(Gauge gauge) {
        gauges.put(gauge.key(), gauge);
    }

    void put(Standing standing) {
        standings.put(standing.site(), standing);
    }

    void put(Offer offer) {
        offers.put(offer.id(), offer);
    }

    Changes changes() {
        return new Changes(
                List.copyOf(alarms.values()),
                List.copyOf(callouts.values()),
                List.copyOf(notices.values()),
                List.copyOf(desks.values()),
                List.copyOf(boxes.values()),
                Map.copyOf(floods),
                List.copyOf(lines.values()),
                List.copyOf(absences.values()),
                List.copyOf(gauges.values()),
                List.copyOf(standings.values()),
                List.copyOf(offers.values()));
    }
}
