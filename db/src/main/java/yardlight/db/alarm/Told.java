package yardlight.db.alarm;

import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.AlarmColumns;
import yardlight.db.columns.CalloutColumns;
import yardlight.db.columns.Column;
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
    private static final String CALLOUTS =
            CalloutColumns.TABLE.select() + " where id in (select callout from notice_callout where notice = ?)";
    private static final String NOW = AlarmColumns.TABLE.among("current_key") + " order by occurred_at, id";

    private static final String MADE = "select id, queued_at from notice where queued_at >= ? order by queued_at, id";

    private static final String HANDED_OVER =
            "select contact, handed_over_at from notice where queued_at >= ? and handed_over_at is not null";

    private static final String TO = NoticeColumns.TABLE.select()
            + " where queued_at >= ? and contact = ? order by queued_at desc, id desc fetch first ? rows only";

    /**
     * A notice and what became of it.
     *
     * @param channel the one that is tried, or was tried last; empty before it is queued
     */
    public record Sent(
            Notice notice, Optional<String> channel, Optional<Instant> handedOverAt, Optional<Instant> deliveredAt) {}

    /** That a carrier took a text for a contact. */
    public record Text(String contact, Instant at) {}

    /** When a notice was made. */
    public record Made(String notice, Instant at) {}

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

    /** The notices that were made at or after the instant, oldest first. */
    public List<Made> made(Instant since) {
        return jdbc.query(
                MADE,
                (rows, n) -> new Made(rows.getString("id"), new Row(rows).time("queued_at")),
                Column.stored(since));
    }

    /** The texts that were made at or after the instant and that a carrier has taken, whoever they were for; in no order. */
    public List<Text> texts(Instant since) {
        return jdbc.query(
                HANDED_OVER,
                (rows, n) -> new Text(rows.getString("contact"), new Row(rows).time("handed_over_at")),
                Column.stored(since));
    }

    /** The newest notices to a contact that were made at or after the instant, newest first. */
    public List<Sent> to(String contact, Instant since, int most) {
        return jdbc.query(TO, (rows, n) -> sent(new Row(rows)), Column.stored(since), contact, most);
    }

    private static Sent sent(Row row) throws SQLException {
        NoticeColumns.KeptNotice kept = NoticeColumns.read(row);
        return new Sent(kept.notice(), kept.channel(), kept.handedOverAt(), kept.deliveredAt());
    }

    /** The alarms that a notice is about, as they stand now, oldest first. */
    public List<Alarm> about(String notice) {
        Object[] keys = jdbc.query(CALLOUTS, (rows, n) -> CalloutColumns.read(new Row(rows)), notice).stream()
                .flatMap(callout -> callout.facts().alarms().stream())
                .map(AlarmColumns::key)
                .distinct()
                .toArray();
        return jdbc.query(
                NOW,
                statement -> statement.setArray(1, statement.getConnection().createArrayOf("varchar", keys)),
                (rows, n) -> AlarmColumns.read(new Row(rows)));
    }
}
