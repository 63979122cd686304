package yardlight.db.journal;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import yardlight.db.columns.NoticeColumns.KeptNotice;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Flood;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.shutin.Standing;
import yardlight.escalation.swap.Offer;

/** What is in the database, as far as it was looked at; tells an insert from an update. */
final class Kept {

    final Map<AlarmKey, Alarm> alarms = new HashMap<>();
    final Map<String, Callout> callouts = new HashMap<>();
    final Map<String, KeptNotice> notices = new HashMap<>();
    final Map<String, Desk> desks = new HashMap<>();
    final Map<String, BoxWatch> boxes = new HashMap<>();
    final Map<String, Flood> floods = new HashMap<>();
    final Map<LineHealth.Key, LineHealth> lines = new HashMap<>();
    final Map<Gauge.Key, Gauge> gauges = new HashMap<>();

    final Map<String, Standing> standings = new HashMap<>();

    final Map<String, Offer> offers = new HashMap<>();

    /** By the id of the alarm's occurrence. */
    final Map<String, Absence> absences = new HashMap<>();

    /** How much of what grows with time and not with the setup alone. */
    int size() {
        return alarms.size() + callouts.size() + notices.size() + floods.size() + absences.size();
    }

    /** The changes are stored. */
    void absorb(Changed changed, Collection<KeptNotice> written) {
        changed.alarms.values().forEach(alarm -> alarms.put(alarm.key(), alarm));
        callouts.putAll(changed.callouts);
        written.forEach(one -> notices.put(one.notice().id(), one));
        desks.putAll(changed.desks);
        boxes.putAll(changed.boxes);
        floods.putAll(changed.floods);
        lines.putAll(changed.lines);
        gauges.putAll(changed.gauges);
        absences.putAll(changed.absences);
        standings.putAll(changed.standings);
        offers.putAll(changed.offers);
    }
}
