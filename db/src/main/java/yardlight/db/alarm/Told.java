package yardlight.db.alarm;

import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.AlarmColumns;
import yardlight.db.columns.NoticeColumns;
import yardlight.db.columns.Row;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.notice.Notice;

/** Goes from what a person has before them, a notice or an old occurrence, to how things stand now. */
@Repository
public class Told {

    private static final String NEWEST = "select id from alarm where current_key = ?";
    private static final String NOTICE = NoticeColumns.TABLE.select() + " where id = ?";
    private static final String ABOUT = AlarmColumns.TABLE.select()
            + " where callout in (select callout from notice_callout where notice = ?) order by occurred_at, id";

    private final JdbcTemplate jdbc;

    Told(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** The id of the newest occurrence of an alarm. */
    public Optional<String> newest(AlarmKey key) {
        return jdbc.query(NEWEST, (rows, n) -> rows.getString("id"), AlarmColumns.key(key)).stream()
                .findFirst();
    }

    public Optional<Notice> notice(String id) {
        return jdbc.query(NOTICE, (rows, n) -> NoticeColumns.read(new Row(rows)).notice(), id).stream()
                .findFirst();
    }

    /** The alarms that a notice is about, as they stand now, oldest first. */
    public List<Alarm> about(String notice) {
        return jdbc.query(ABOUT, (rows, n) -> AlarmColumns.read(new Row(rows)), notice);
    }
}
