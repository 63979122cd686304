package yardlight.db.boxkey;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Column;
import yardlight.db.columns.Row;
import yardlight.db.disk.Disk;

/** The keys of all boxes. */
@Repository
public class BoxKeys {

    private static final String SELECT = "select id, box, key_hash, created_at, revoked_at from box_key";
    private static final String ADD =
            "insert into box_key (id, box, key_hash, created_at, revoked_at) values (?, ?, ?, ?, ?)";
    private static final String REVOKE =
            "update box_key set revoked_at = ? where box = ? and id = ? and revoked_at is null";

    private final JdbcTemplate jdbc;
    private final Disk disk;

    BoxKeys(JdbcTemplate jdbc, Disk disk) {
        this.jdbc = jdbc;
        this.disk = disk;
    }

    /** The key with this hash, revoked or not. */
    public Optional<BoxKey> byHash(String hash) {
        return jdbc.query(SELECT + " where key_hash = ?", BoxKeys::read, hash).stream()
                .findFirst();
    }

    /** The keys of a box, oldest first, revoked ones too. */
    public List<BoxKey> of(String box) {
        return jdbc.query(SELECT + " where box = ? order by created_at", BoxKeys::read, box);
    }

    /** Adds a key; on disk when it returns. */
    public void add(BoxKey key) {
        Object revoked = key.revokedAt().map(Column::stored).orElse(null);
        disk.keep(() -> jdbc.update(ADD, key.id(), key.box(), key.hash(), Column.stored(key.createdAt()), revoked));
    }

    /** Revokes a key of this box; on disk when it returns. False when the box has no such key that is still good. */
    public boolean revoke(String box, String id, Instant now) {
        return disk.keep(() -> jdbc.update(REVOKE, Column.stored(now), box, id)) > 0;
    }

    private static BoxKey read(ResultSet rows, int number) throws SQLException {
        var row = new Row(rows);
        return new BoxKey(
                row.text("id"),
                row.text("box"),
                row.text("key_hash"),
                row.time("created_at"),
                row.maybeTime("revoked_at"));
    }
}
