package yardlight.db.journal;

import java.util.LinkedHashMap;
import java.util.Map;
import yardlight.escalation.Changes;
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

/** What the decisions of a transaction come to: the last word on each thing, so that each row is written once. */
final class Changed {

    /** By the id of the occurrence: one alarm can occur twice in a batch. */
    final Map<String, Alarm> alarms = new LinkedHashMap<>();

    final Map<String, Callout> callouts = new LinkedHashMap<>();
    final Map<String, Notice> notices = new LinkedHashMap<>();
    final Map<String, Desk> desks = new LinkedHashMap<>();
    final Map<String, BoxWatch> boxes = new LinkedHashMap<>();
    final Map<String, Flood> floods = new LinkedHashMap<>();
    final Map<LineHealth.Key, LineHealth> lines = new LinkedHashMap<>();
    final Map<Gauge.Key, Gauge> gauges = new LinkedHashMap<>();
    final Map<String, Standing> standings = new LinkedHashMap<>();
    final Map<String, Offer> offers = new LinkedHashMap<>();

    /** By the id of the alarm's occurrence. */
    final Map<String, Absence> absences = new LinkedHashMap<>();

    void add(Changes changes) {
        changes.alarms().forEach(alarm -> alarms.put(alarm.id(), alarm));
        changes.callouts().forEach(callout -> callouts.put(callout.id(), callout));
        changes.notices().forEach(notice -> notices.put(notice.id(), notice));
        changes.desks().forEach(desk -> desks.put(desk.contact(), desk));
        changes.boxes().forEach(watch -> boxes.put(watch.box(), watch));
        floods.putAll(changes.floods());
        changes.lines().forEach(line -> lines.put(line.key(), line));
        changes.gauges().forEach(gauge -> gauges.put(gauge.key(), gauge));
        changes.standings().forEach(standing -> standings.put(standing.site(), standing));
        changes.offers().forEach(offer -> offers.put(offer.id(), offer));
        changes.absences().forEach(absence -> absences.put(absence.alarm(), absence));
    }
}
