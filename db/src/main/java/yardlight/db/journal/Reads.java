package yardlight.db.journal;

import java.util.Collection;
import java.util.List;
import yardlight.db.columns.AbsenceColumns;
import yardlight.db.columns.AlarmColumns;
import yardlight.db.columns.BoxColumns;
import yardlight.db.columns.CalloutColumns;
import yardlight.db.columns.DeskColumns;
import yardlight.db.columns.FloodColumns;
import yardlight.db.columns.GaugeColumns;
import yardlight.db.columns.LineColumns;
import yardlight.db.columns.NoticeColumns;
import yardlight.db.columns.NoticeColumns.KeptNotice;
import yardlight.db.columns.ShutInColumns;
import yardlight.db.columns.SwapColumns;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.shutin.Standing;
import yardlight.escalation.swap.Offer;

/** Reads what is stored, each kind in one query however much is asked for. */
final class Reads {

    private static final String ALARMS = AlarmColumns.TABLE.among("current_key");
    private static final String ALARMS_AT = AlarmColumns.TABLE.among("live_site");
    private static final String CALLOUTS = CalloutColumns.TABLE.among("id");
    private static final String CALLOUTS_AT = CalloutColumns.TABLE.among("live_site");
    private static final String NOTICES = NoticeColumns.TABLE.among("id");
    private static final String UNSENT = NoticeColumns.OF_CALLOUTS + " where t.state in ('queued', 'held')";
    private static final String QUEUED = NoticeColumns.TABLE.select()
            + " where id in (select notice from outbox where channel = any(?)) and state = 'queued'";
    private static final String DESKS = DeskColumns.TABLE.select();
    private static final String BOXES = BoxColumns.TABLE.among("box");
    private static final String FLOODS = FloodColumns.TABLE.among("site");

    private static final String ABSENCES = AbsenceColumns.TABLE.among("newest_on");

    private static final String GAUGES = GaugeColumns.TABLE.among("id");

    private static final String LINES = LineColumns.TABLE.select();

    private static final String STANDINGS = ShutInColumns.TABLE.among("site");

    private static final String OFFERS = SwapColumns.TABLE.among("id");

    private static final String OFFERS_OPEN = SwapColumns.TABLE.among("open_in");

    private final Pen pen;

    Reads(Pen pen) {
        this.pen = pen;
    }

    AnswerCodes codes(int last) {
        return AnswerCodes.read(pen, last);
    }

    List<Alarm> alarms(Collection<AlarmKey> keys) {
        return pen.among(ALARMS, keys.stream().map(AlarmColumns::key).toList(), AlarmColumns::read);
    }

    List<Alarm> alarmsAt(Collection<String> sites) {
        return pen.among(ALARMS_AT, sites, AlarmColumns::read);
    }

    List<Callout> callouts(Collection<String> ids) {
        return pen.among(CALLOUTS, ids, CalloutColumns::read);
    }

    List<Callout> calloutsAt(Collection<String> sites) {
        return pen.among(CALLOUTS_AT, sites, CalloutColumns::read);
    }

    List<KeptNotice> notices(Collection<String> ids) {
        return pen.among(NOTICES, ids, NoticeColumns::read);
    }

    List<KeptNotice> unsent(Collection<String> callouts) {
        return pen.among(UNSENT, callouts, NoticeColumns::read);
    }

    List<KeptNotice> queued(String channel) {
        return pen.among(QUEUED, List.of(channel), NoticeColumns::read);
    }

    List<Desk> desks() {
        return pen.read(DESKS, (statement, none) -> {}, DeskColumns::read);
    }

    List<BoxWatch> boxes(Collection<String> ids) {
        return pen.among(BOXES, ids, BoxColumns::read);
    }

    List<Absence> absences(Collection<Path> paths) {
        return pen.among(ABSENCES, paths.stream().map(AbsenceColumns::path).toList(), AbsenceColumns::read);
    }

    List<FloodColumns.SiteFlood> floods(Collection<String> sites) {
        return pen.among(FLOODS, sites, FloodColumns::read);
    }

    List<Gauge> gauges(Collection<Gauge.Key> keys) {
        return pen.among(GAUGES, keys.stream().map(GaugeColumns::id).toList(), GaugeColumns::read);
    }

    List<Standing> standings(Collection<String> sites) {
        return pen.among(STANDINGS, sites, ShutInColumns::read);
    }

    List<Offer> offers(Collection<String> ids) {
        return pen.among(OFFERS, ids, SwapColumns::read);
    }

    List<Offer> openOffers(Collection<String> rosters) {
        return pen.among(OFFERS_OPEN, rosters, SwapColumns::read);
    }

    List<LineHealth> lines() {
        return pen.read(LINES, (statement, none) -> {}, LineColumns::read);
    }
}
