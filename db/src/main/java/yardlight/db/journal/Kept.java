package yardlight.db.journal;

import java.util.HashMap;
import java.util.Map;
import yardlight.db.columns.NoticeColumns.KeptNotice;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Flood;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.quiet.Desk;

/** What was found in the database at the beginning of the transaction; tells an insert from an update. */
final class Kept {

    final Map<AlarmKey, Alarm> alarms = new HashMap<>();
    final Map<String, Callout> callouts = new HashMap<>();
    final Map<String, KeptNotice> notices = new HashMap<>();
    final Map<String, Desk> desks = new HashMap<>();
    final Map<String, BoxWatch> boxes = new HashMap<>();
    final Map<String, Flood> floods = new HashMap<>();
}
