package yardlight.db.retention;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import yardlight.db.columns.Column;
import yardlight.db.tree.Frontier;

/**
 * Deletes what is too old, a little at a time so that the writer is not kept waiting. What is current stays, however old:
 * the newest occurrence of each alarm with its callout and notices, and whatever is not over.
 */
@Component
public class Retention {

    private static final int AT_ONCE = 2000;

    /** Events are numbered as they come, so the oldest are the first. */
    private static final String OLD_EVENTS = "select number from (select number, received_at from event order by number"
            + " fetch first " + AT_ONCE + " rows only) as oldest where received_at < ?";

    /** A box whose clock is years behind says of itself that its alarms are old. */
    private static final String OLD_ALARMS =
            "select id from alarm where occurred_at < ? and (received_at is null or received_at < ?)"
                    + " and current_key is null and (returned_at is null or returned_at < ?) order by occurred_at";

    private static final String OLD_CALLOUTS = "select id from callout where started_at < ? and ended_at < ?"
            + " and id not in (select callout from alarm where current_key > '' and callout is not null)";
    private static final String OLD_NOTICES = "select id from notice where queued_at < ?"
            + " and state not in ('queued', 'held') and not exists (select 1 from notice_callout nc"
            + " join callout c on c.id = nc.callout where nc.notice = notice.id) order by queued_at";
    private static final String TREE = "select log_first from lane where id = 1";
    private static final String OLDEST_LINE = "select min(line) from log_line";
    private static final String OLD_TILE =
            "select count(*) from log_line where line >= ? and line < ? and logged_at < ?";
    private static final String CUT = "delete from log_line where line < ?";
    private static final String OLD_LINKS = "select token_hash from link where expires_at < ? order by expires_at";

    private static final String OLD_SILENCES =
            "select alarm from silence where found_at < ? and newest_on is null order by found_at";
    private static final String OLD_SWAPS =
            "select id from swap where asked_at < ? and open_in is null order by asked_at";
    private static final String OLD_TEXTS = "select id from incoming_text where received_at < ? order by received_at";
    private static final String OLD_INVITATIONS = "select id from invitation where expires_at < ? order by expires_at";

    /** What nobody has come with for so long is new when somebody does. */
    private static final String OLD_DEVICES = "select id from device where last_at < ? order by last_at";

    private static final String OLD_RECEIPTS = "select id from receipt where kept_at < ? order by kept_at";

    private final JdbcTemplate jdbc;

    Retention(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** Deletes what is too old at {@code now}, and tells how much, by the name of the table. */
    public Map<String, Integer> sweep(Ages ages, Instant now) {
        Object events = Column.stored(now.minus(ages.events()));
        Object record = Column.stored(now.minus(ages.record()));
        var swept = new LinkedHashMap<String, Integer>();
        swept.put("event", delete("event", "number", OLD_EVENTS, events));
        swept.put("alarm", delete("alarm", "id", OLD_ALARMS, record, record, record));
        swept.put("callout", delete("callout", "id", OLD_CALLOUTS, record, record));
        swept.put("notice", delete("notice", "id", OLD_NOTICES, record));
        swept.put("silence", delete("silence", "alarm", OLD_SILENCES, record));
        swept.put("swap", delete("swap", "id", OLD_SWAPS, record));
        swept.put("log_line", lines(record));
        swept.put("link", delete("link", "token_hash", OLD_LINKS, events));
        swept.put("invitation", delete("invitation", "id", OLD_INVITATIONS, events));
        swept.put("device", delete("device", "id", OLD_DEVICES, record));
        swept.put("incoming_text", delete("incoming_text", "id", OLD_TEXTS, events));
        swept.put("receipt", delete("receipt", "id", OLD_RECEIPTS, events));
        return swept;
    }

    /**
     * Lines of the log go by the tile: what remains can still be shown to be whole and unchanged, for the hash of a tile
     * stays. So up to 255 lines stay a little longer.
     */
    private int lines(Object before) {
        Long oldest = jdbc.queryForObject(OLDEST_LINE, Long.class);
        Long first = jdbc.queryForObject(TREE, Long.class);
        if (oldest == null || first == null || first == 0) {
            return 0;
        }
        int all = 0;
        long from = Math.max(first, oldest - Math.floorMod(oldest - first, (long) Frontier.TILE));
        while (tileIsOld(from, before)) {
            from += Frontier.TILE;
            all += jdbc.update(CUT, from);
        }
        return all;
    }

    private boolean tileIsOld(long from, Object before) {
        Integer old = jdbc.queryForObject(OLD_TILE, Integer.class, from, from + Frontier.TILE, before);
        return old != null && old == Frontier.TILE;
    }

    private int delete(String table, String key, String which, Object... values) {
        String sql =
                "delete from " + table + " where " + key + " in (" + which + " fetch first " + AT_ONCE + " rows only)";
        int all = 0;
        int some;
        do {
            some = jdbc.update(sql, values);
            all += some;
        } while (some == AT_ONCE);
        return all;
    }
}
