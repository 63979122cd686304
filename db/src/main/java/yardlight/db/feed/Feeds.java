package yardlight.db.feed;

import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Column;
import yardlight.db.columns.Row;
import yardlight.db.disk.Disk;

/** The private calendars, at most one for each contact. */
@Repository
public class Feeds {

    private static final String SELECT = "select contact, token_hash, made_by, made_at from calendar_feed where ";

    private final JdbcTemplate jdbc;
    private final Disk disk;

    Feeds(JdbcTemplate jdbc, Disk disk) {
        this.jdbc = jdbc;
        this.disk = disk;
    }

    public Optional<Feed> of(String contact) {
        return find("contact = ?", contact);
    }

    public Optional<Feed> byHash(String hash) {
        return find("token_hash = ?", hash);
    }

    private Optional<Feed> find(String which, String value) {
        List<Feed> found = jdbc.query(
                SELECT + which,
                (rows, n) -> {
                    var row = new Row(rows);
                    return new Feed(
                            row.text("contact"), row.text("token_hash"), row.text("made_by"), row.time("made_at"));
                },
                value);
        return found.stream().findFirst();
    }

    /** Keeps it in the place of the one before, which nothing leads to any more; on disk when it returns. */
    public void put(Feed feed) {
        disk.keep(() -> {
            jdbc.update("delete from calendar_feed where contact = ?", feed.contact());
            return jdbc.update(
                    "insert into calendar_feed (contact, token_hash, made_by, made_at) values (?, ?, ?, ?)",
                    feed.contact(),
                    feed.tokenHash(),
                    feed.by(),
                    Column.stored(feed.at()));
        });
    }

    /** On disk when it returns. False when there was none. */
    public boolean remove(String contact) {
        return disk.keep(() -> jdbc.update("delete from calendar_feed where contact = ?", contact)) > 0;
    }
}
