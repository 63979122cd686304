package yardlight.db.journal;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.columns.AlarmColumns;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;

/** What is due by the table, and by the state that it follows from. */
final class DueRows {

    private DueRows() {}

    static Map<String, Instant> of(JdbcTemplate jdbc) {
        var dues = new TreeMap<String, Instant>();
        jdbc.query("select kind, subject, due_at from due where kind not in ('box', 'gauge')", rows -> {
            dues.put(
                    rows.getString(1) + " " + rows.getString(2),
                    rows.getTimestamp(3).toInstant());
        });
        return dues;
    }

    /** The boxes and points whose deadline no row watches; one may fire too early, and never too late. */
    static List<String> unwatched(JdbcTemplate jdbc) {
        return jdbc.queryForList(
                "select box from box_watch where deadline is not null and not exists (select 1 from due where kind = 'box'"
                        + " and subject = box and due_at <= deadline and ready_at = due_at) union all"
                        + " select id from gauge where deadline is not null and not exists (select 1 from due where kind = 'gauge'"
                        + " and subject = id and due_at <= deadline and ready_at = due_at)",
                String.class);
    }

    static Map<String, Instant> expected(TwinNight night) {
        var dues = new TreeMap<String, Instant>();
        for (Alarm alarm : night.picture().alarms()) {
            alarm.dueAt(night.setup()
                            .point(alarm.key().site(), alarm.key().point())
                            .timing())
                    .ifPresent(at -> dues.put("alarm " + AlarmColumns.key(alarm.key()), at));
        }
        for (Callout callout : night.picture().callouts()) {
            callout.dueAt().ifPresent(at -> dues.put("callout " + callout.id(), at));
        }
        for (Notice notice : night.picture().notices()) {
            notice.dueAt().ifPresent(at -> dues.put("notice " + notice.id(), at));
        }
        for (String contact : List.of("ana", "ben")) {
            night.picture().desk(contact).dueAt().ifPresent(at -> dues.put("desk " + contact, at));
        }
        return dues;
    }
}
